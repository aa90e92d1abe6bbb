// The race card: what comes next, by the clock and by the place. Without it the whole list is there to read.

const list = document.querySelector("[data-start]");
const steps = [...list.querySelectorAll("li[data-km]")];
const key = `start.${location.pathname}`;
const byClock = document.getElementById("by-clock");
const byPlace = document.getElementById("by-place");
const place = document.getElementById("km");
const started = document.getElementById("started");
const planned = Date.parse(list.dataset.start);

function start() {
  try {
    return Number(localStorage.getItem(key)) || planned;
  } catch {
    return planned; // storage may be forbidden
  }
}

const clock = (at) => new Date(at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
const text = (step) => `${step.dataset.place}: ${step.querySelector(".take").textContent.trim()}`;

function show() {
  const now = Date.now();
  const begin = start();
  // a step just due is still the next one for a minute
  const next = steps.find((step) => begin + step.dataset.at * 1000 >= now - 60000);
  byClock.textContent =
    now < begin && begin - now > 12 * 3600000
      ? `First: ${text(steps[0])}`
      : next
        ? `${clock(begin + next.dataset.at * 1000)}, ${text(next)}`
        : "Nothing more to take. Run it home.";
  const km = Number(place.value.replace(",", "."));
  const ahead = steps.find((step) => Number(step.dataset.km) >= km);
  byPlace.textContent = place.value === "" ? "" : ahead ? text(ahead) : "Nothing more to take. Run it home.";
  for (const step of steps) {
    const isPast = place.value === "" ? begin + step.dataset.at * 1000 < now - 60000 : Number(step.dataset.km) < km;
    step.classList.toggle("past", isPast);
    if (step === (place.value === "" ? next : ahead)) step.setAttribute("aria-current", "step");
    else step.removeAttribute("aria-current");
    step.querySelector("time").textContent = clock(begin + step.dataset.at * 1000);
  }
  started.textContent = begin === planned ? "" : `Started at ${clock(begin)}. `;
}

document.getElementById("start-now").addEventListener("click", () => {
  try {
    if (start() === planned) localStorage.setItem(key, Date.now());
    else localStorage.removeItem(key);
  } catch {
    // then the planned start goes on counting
  }
  show();
});
place.addEventListener("input", show);
for (const part of document.querySelectorAll("[data-live]")) part.hidden = false;
setInterval(show, 15000);
show();
