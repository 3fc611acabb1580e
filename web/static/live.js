// Keeps a page that is only read up to date. A message on /events means "something changed"; the page is then
// fetched again and the parts marked data-live (each with an id) are swapped. While somebody types, or a thumb was
// just on the screen, nothing moves: the news is announced and waits for a press.
const bar = document.getElementById("live-bar");
const offline = document.getElementById("page-offline");
const quietAfterTouch = 3000; // ms after a touch or key in which nothing may move
let waiting = 0;
let lastTouch = -quietAfterTouch;
let timer = 0;
let fetching = false;
let edited = false;

const live = () => document.querySelectorAll("[data-live][id]");

function mustHold() {
  const at = document.activeElement;
  return edited || (at && at.closest("form") && at.matches("input, select, textarea"))
    || performance.now() - lastTouch < quietAfterTouch;
}

function announce() {
  const words = waiting === 1 ? bar.dataset.one : bar.dataset.many.replace("{n}", waiting);
  bar.querySelector("p").textContent = words;
  bar.hidden = false;
}

async function swap() {
  if (fetching) return;
  fetching = true;
  try {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" }, credentials: "same-origin" });
    if (!answer.ok) return;
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    for (const part of live()) {
      const next = fresh.getElementById(part.id);
      if (next && next.innerHTML !== part.innerHTML) replace(part, document.importNode(next, true));
    }
    waiting = 0;
    bar.hidden = true;
    offline.textContent = "";
  } catch {
    lost();
  } finally {
    fetching = false;
  }
}

function replace(part, next) {
  const open = new Set([...part.querySelectorAll("details[open][id]")].map((each) => each.id));
  for (const each of next.querySelectorAll("details[id]")) each.open = open.has(each.id);
  const focused = part.contains(document.activeElement) ? document.activeElement.id : "";
  if (part.id !== "page-age") next.classList.add("changed");
  part.replaceWith(next);
  if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
}

function changed() {
  waiting += 1;
  clearTimeout(timer);
  // a little chance in the wait, so that a hall full of phones does not ask in the same instant
  timer = setTimeout(settle, 150 + Math.random() * 600);
}

function settle() {
  if (waiting === 0) return;
  if (!mustHold()) return swap();
  announce();
  // nothing being typed, only a finger on the screen a moment ago: try again when it has gone
  if (!edited) timer = setTimeout(settle, quietAfterTouch);
}

function lost() {
  const at = new Date().toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
  if (!offline.textContent) offline.textContent = bar.dataset.offline.replace("{time}", at);
}

if (live().length > 0) {
  for (const kind of ["pointerdown", "touchstart", "keydown", "wheel"]) {
    addEventListener(kind, () => { lastTouch = performance.now(); }, { passive: true });
  }
  addEventListener("input", () => { edited = true; });
  addEventListener("submit", () => { edited = false; });
  bar.querySelector("button").addEventListener("click", swap);
  const events = new EventSource("/events");
  let opened = false;
  events.onopen = () => {
    offline.textContent = "";
    if (opened) changed(); // something may have been missed while away
    opened = true;
  };
  events.onmessage = changed;
  events.onerror = lost;
}
