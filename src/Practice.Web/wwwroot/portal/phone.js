// Keeps on the phone what is typed and what could not be sent yet. Without it the pages work as plain forms.

const kept = {
  get: (key) => {
    try {
      return JSON.parse(localStorage.getItem(key));
    } catch {
      return null; // storage may be forbidden, or hold what an older page wrote
    }
  },
  set: (key, value) => {
    try {
      localStorage.setItem(key, JSON.stringify(value));
      return true;
    } catch {
      return false;
    }
  },
  drop: (key) => localStorage.removeItem(key),
  keys: (prefix) => Object.keys(localStorage).filter((key) => key.startsWith(prefix)),
};

const words = {
  draft: "Kept on this phone, not sent yet",
  sending: "Sending…",
  waiting: "Kept on this phone, will be sent",
  sent: "Sent",
  refused: "Not sent: something is marked above",
  late: "Already read by your nutritionist: not changed",
  closed: "This link is closed. Ask for a new one; what you typed is kept here.",
};

navigator.serviceWorker?.register("/p/worker.js", { scope: "/p/" }).catch(() => {});

// where a link begins its other pages are kept too: they open without signal though nobody looked at them before
navigator.serviceWorker?.ready.then((worker) =>
  worker.active.postMessage([...document.querySelectorAll("a[data-keep]")].map((link) => link.href)),
);

// --- ticks on the plan -------------------------------------------------------------------------------------------

for (const box of document.querySelectorAll("[data-tick]")) {
  const key = `tick.${box.dataset.tick}`;
  box.checked = kept.get(key) === true;
  box.addEventListener("change", () => (box.checked ? kept.set(key, true) : kept.drop(key)));
}

// --- a page kept since yesterday opens on today ------------------------------------------------------------------

const now = new Date();
const today = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, "0")).join("-");
const days = [...document.querySelectorAll(".day[data-date]")];
if (days.some((day) => day.dataset.date === today)) for (const day of days) day.open = day.dataset.date === today;

// --- the log of a rehearsal --------------------------------------------------------------------------------------

const form = document.querySelector("form[data-log]");
const outbox = "outbox.";
const say = (what) => (document.getElementById("state").textContent = words[what]);

if (form) {
  const id = form.dataset.log;
  const draft = `draft.${id}`;
  restore();
  describe();
  addSteppers();
  addEverything();

  form.addEventListener("input", () => {
    describe();
    keepDraft();
    say("draft");
  });

  form.addEventListener("submit", (event) => {
    const entry = { to: location.pathname, body: body(), key: crypto.randomUUID() };
    if (!kept.set(outbox + id, entry)) return; // nowhere to keep it: the browser sends the form itself
    event.preventDefault();
    keepDraft();
    mark({});
    send();
  });

  if (kept.get(outbox + id)) say("waiting");

  function keepDraft() {
    kept.set(draft, { at: Date.now(), fields: fields() });
  }

  function fields() {
    return [...new FormData(form)].filter(([name]) => name !== "key");
  }

  function body() {
    return new URLSearchParams(fields()).toString();
  }

  // what was typed here and not sent stands above what the server knew, unless it was told something newer elsewhere
  function restore() {
    const typed = kept.get(draft);
    if (!typed) return;
    if (typed.at < Number(form.dataset.told ?? 0)) return kept.drop(draft);
    const told = new Map(typed.fields);
    for (const field of form.elements) {
      if (!field.name || field.name === "key") continue;
      if (field.type === "radio") field.checked = told.get(field.name) === field.value;
      else if (field.type === "checkbox") field.checked = told.has(field.name);
      else if (told.has(field.name)) field.value = told.get(field.name);
    }
    say("draft");
  }

  function describe() {
    for (const scale of form.querySelectorAll("input[type=range]")) {
      const score = Number(scale.value);
      const word = score === 0 ? "none" : score < 5 ? "mild" : score < 10 ? "disturbed me" : "had to stop";
      const text = form.dataset.words || score === 0 ? word : `${score} · ${word}`;
      scale.setAttribute("aria-valuetext", text);
      scale.closest("label").querySelector(".score").textContent = text;
    }
  }

  function addSteppers() {
    for (const box of form.querySelectorAll(".number[data-step]")) {
      const input = box.querySelector("input");
      const label = form.querySelector(`label[for="${input.id}"]`).textContent;
      const step = Number(box.dataset.step);
      const add = (sign, by) => {
        const button = document.createElement("button");
        Object.assign(button, { type: "button", className: "button", textContent: sign });
        button.setAttribute("aria-label", `${by < 0 ? "Less" : "More"}: ${label}`);
        button.addEventListener("click", () => {
          const before = Number(input.value.replace(",", ".")) || 0;
          input.value = String(Math.max(0, Math.round((before + by) * 100) / 100));
          input.dispatchEvent(new Event("input", { bubbles: true }));
        });
        return button;
      };
      input.before(add("−", -step));
      input.after(add("+", step));
    }
  }

  // what went well is the usual, and one tap
  function addEverything() {
    for (const day of form.querySelectorAll("details.day"))
      day.querySelector("summary").after(chooseAll("I ate all of this day as planned", day));
    const felt = form.querySelector(".felt");
    felt.before(chooseAll("Nothing at all, at any time", felt.parentElement));
  }

  function chooseAll(name, within) {
    const button = document.createElement("button");
    Object.assign(button, { type: "button", className: "button", textContent: name });
    button.addEventListener("click", () => {
      for (const choice of within.querySelectorAll(":is(.meal, .felt) > .choices .strong input")) choice.checked = true;
      form.dispatchEvent(new Event("input"));
    });
    return button;
  }
}

/** Shows what the server refused, beside its field. */
function mark(refusals) {
  for (const place of document.querySelectorAll("[data-refusal]")) {
    const refusal = refusals[place.dataset.refusal];
    place.textContent = refusal ?? "";
    const field = document.getElementsByName(place.dataset.refusal)[0];
    if (refusal) field?.setAttribute("aria-invalid", "true");
    else field?.removeAttribute("aria-invalid");
  }
  const first = document.querySelector(".refusal:not(:empty)");
  first?.closest("details")?.setAttribute("open", "");
  first?.scrollIntoView({ block: "center" });
}

// --- sending: one after the other, each under its own name until the server says it has it -------------------------

let sending = false;
let again = 0;

async function send() {
  clearTimeout(again);
  if (sending) return;
  sending = true;
  try {
    await (navigator.locks?.request("practice-phone-send", sendAll) ?? sendAll());
  } finally {
    sending = false;
  }
  if (kept.keys(outbox).length > 0) again = setTimeout(send, 20_000);
}

async function sendAll() {
  for (const place of kept.keys(outbox)) {
    const entry = kept.get(place);
    if (!entry) continue;
    const isHere = form && place === outbox + form.dataset.log;
    if (isHere) say("sending");
    const outcome = await post(entry);
    if (outcome.again) {
      if (isHere) say("waiting");
      continue;
    }
    // pressed once more meanwhile: then a newer entry stands there, and is sent next
    const isNewest = kept.get(place)?.key === entry.key;
    if (isNewest) kept.drop(place);
    if (isHere && isNewest) settle(outcome, place);
    else if (outcome.sent) kept.drop(place.replace(outbox, "draft."));
  }
}

async function post({ to, body, key }) {
  try {
    const response = await fetch(to, {
      method: "POST",
      headers: { Accept: "application/json", "Content-Type": "application/x-www-form-urlencoded" },
      body: `${body}&key=${key}`,
    });
    if (response.ok) return { sent: true };
    if (response.status === 422) return { refusals: (await response.json()).refusals };
    if (response.status === 409) return { late: true };
    if (response.status === 404) return { closed: true };
    return { again: true };
  } catch {
    return { again: true };
  }
}

function settle(outcome, place) {
  if (outcome.sent) {
    kept.drop(place.replace(outbox, "draft."));
    say("sent");
    navigator.serviceWorker?.controller?.postMessage([location.origin + location.pathname]); // the kept page is the one from before
  } else if (outcome.refusals) {
    mark(outcome.refusals);
    say("refused");
  } else say(outcome.late ? "late" : "closed");
}

addEventListener("online", send);
addEventListener("visibilitychange", () => document.visibilityState === "visible" && send());
if (kept.keys(outbox).length > 0) send();
