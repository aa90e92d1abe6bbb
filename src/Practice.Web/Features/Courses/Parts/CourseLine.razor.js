// Steps are dragged along the course with any pointer, or moved with the arrow keys; the server hears where they end.
export function attach(ground, line) {
  const length = () => Number(ground.dataset.km);
  const stopsOf = step => step.dataset.stops ? step.dataset.stops.split(" ").map(Number) : null;
  const nearest = (stops, km) => stops.reduce((best, at) => Math.abs(at - km) < Math.abs(best - km) ? at : best);
  const label = document.createElement("output");
  label.className = "drag-label";
  label.hidden = true;
  ground.append(label);
  let held = null;

  const place = clientX => {
    const box = ground.getBoundingClientRect();
    const km = Math.min(1, Math.max(0, (clientX - box.left) / box.width)) * length();
    return held.stops ? nearest(held.stops, km) : Math.round(km * 10) / 10;
  };

  const show = km => {
    const left = `${100 * km / length()}%`;
    held.step.style.left = left;
    label.style.left = left;
    label.textContent = `${km} km`;
    label.hidden = false;
  };

  ground.addEventListener("pointerdown", e => {
    const step = e.target.closest("[data-step]");
    if (!step || e.button !== 0) return;
    held = { step, stops: stopsOf(step), from: e.clientX, began: step.style.left, km: Number(step.dataset.stepKm), moved: false };
    step.setPointerCapture(e.pointerId);
  });

  ground.addEventListener("pointermove", e => {
    if (!held || (!held.moved && Math.abs(e.clientX - held.from) < 4)) return;
    held.moved = true;
    held.step.classList.add("dragged");
    held.km = place(e.clientX);
    show(held.km);
  });

  const release = keep => {
    if (!held) return;
    const { step, km, moved, began } = held;
    step.classList.remove("dragged");
    label.hidden = true;
    held = null;
    if (moved && keep) line.invokeMethodAsync("Moved", Number(step.dataset.step), km);
    else if (moved) step.style.left = began;
  };

  ground.addEventListener("pointerup", () => release(true));
  ground.addEventListener("pointercancel", () => release(false));

  ground.addEventListener("keydown", e => {
    const step = e.target.closest("[data-step]");
    if (!step) return;
    const id = Number(step.dataset.step);
    if (e.key === "Escape") { release(false); return; }
    if (e.key === "Delete") { e.preventDefault(); line.invokeMethodAsync("Removed", id); return; }
    const way = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[e.key];
    if (!way) return;
    e.preventDefault();
    const km = Number(step.dataset.stepKm);
    const stops = stopsOf(step);
    const next = stops
      ? (way > 0 ? stops.find(s => s > km + 1e-6) : stops.findLast(s => s < km - 1e-6))
      : Math.min(length(), Math.max(0, Math.round((km + way * (e.shiftKey ? 1 : 0.1)) * 10) / 10));
    if (next !== undefined) line.invokeMethodAsync("Moved", id, next);
  });
}
