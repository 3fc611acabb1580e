// Keeps a page that is only read up to date. A message on /events means "something changed", with a number: so often;
// the page is then fetched again and the parts marked data-live (each with an id) are swapped. While somebody types, or
// a thumb was just on the screen, nothing moves: the news is announced and waits for a press.
const bar = document.getElementById("live-bar");
const news = bar.querySelector(".news");
const show = bar.querySelector("button");
const quietAfterTouch = 3000; // ms after a touch or key in which nothing may move
let waiting = 0;
let lastTouch = -quietAfterTouch;
let timer = 0;
let fetching = false;
let edited = false; // something was typed and not yet sent
let away = false;
let gone = false; // nothing is here for this reader any more
const posted = document.body.dataset.posted !== undefined; // the answer to a form: its address may hold no page

const live = () => document.querySelectorAll("[data-live][id]");

function mustHold() {
  const at = document.activeElement;
  return edited || (at && at.closest("form") && at.matches("input, select, textarea"))
    || performance.now() - lastTouch < quietAfterTouch;
}

function say(words, canShow) {
  news.textContent = words;
  bar.classList.toggle("has-news", words !== "");
  show.hidden = !canShow;
}

function announce() {
  say(waiting === 1 ? bar.dataset.one : bar.dataset.many.replace("{n}", waiting), true);
}

async function swap() {
  if (fetching) return;
  fetching = true;
  const shown = waiting; // what comes in while the page is fetched counts afresh
  try {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" }, credentials: "same-origin" });
    if (answer.status === 403 || answer.status === 404 || answer.status === 410) return leaveIt();
    if (!answer.ok) return;
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    for (const part of live()) {
      if (edited && part.querySelector("form")) continue; // nothing typed is lost
      const next = fresh.getElementById(part.id);
      if (next && next.innerHTML !== part.innerHTML) replace(part, document.importNode(next, true));
    }
    waiting -= shown;
    say("", false);
  } catch {
    lost();
  } finally {
    fetching = false;
    if (waiting > 0 && !away) schedule(quietAfterTouch);
  }
}

// The page is no longer this reader's, such as a sheet of a tie that another club plays now: it is not asked for again.
function leaveIt() {
  gone = true;
  waiting = 0;
  say(bar.dataset.gone, true);
}

function replace(part, next) {
  const open = new Set([...part.querySelectorAll("details[open][id]")].map((each) => each.id));
  for (const each of next.querySelectorAll("details[id]")) each.open = open.has(each.id);
  const focused = part.contains(document.activeElement) ? document.activeElement.id : "";
  if (part.id !== "page-age") next.classList.add("changed");
  part.replaceWith(next);
  if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
}

function changed(message) {
  if (posted || gone) return;
  waiting += Number(message?.data.split(" ")[1] ?? 1); // "changed 3": three at once
  if (!show.hidden) announce();
  // a little chance in the wait, so that a hall full of phones does not ask in the same instant
  schedule(150 + Math.random() * 600);
}

// A wait that runs is not begun again: in a busy hall changes come faster than it ends, and the page would never move.
function schedule(ms) {
  if (timer === 0) timer = setTimeout(settle, ms);
}

function settle() {
  timer = 0;
  if (waiting === 0) return;
  if (!mustHold()) return swap();
  announce();
  // nothing being typed, only a finger on the screen a moment ago: try again when it has gone
  if (!edited) schedule(quietAfterTouch);
}

function lost() {
  if (away) return;
  away = true;
  document.body.dataset.away = "";
  const at = new Date().toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
  say(bar.dataset.offline.replace("{time}", at), waiting > 0);
}

function back() {
  if (!away) return;
  away = false;
  delete document.body.dataset.away;
  document.dispatchEvent(new Event("connection-back"));
  say("", false);
  changed(); // something may have been missed
}

if (live().length > 0) {
  for (const kind of ["pointerdown", "touchstart", "keydown", "wheel"]) {
    addEventListener(kind, () => { lastTouch = performance.now(); }, { passive: true });
  }
  addEventListener("input", () => { edited = true; });
  addEventListener("submit", () => { edited = false; });
  show.addEventListener("click", () => (gone ? location.assign(document.querySelector(".places a")?.href ?? "/") : swap()));
  const events = new EventSource("/events");
  events.onopen = back;
  events.onmessage = changed;
  events.onerror = lost;
}
