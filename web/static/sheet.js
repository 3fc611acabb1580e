// A sheet by taps: the lists of the form are the truth, places and names only show them. Every choice stays in this page (and
// on this phone, against a reload) until the sheet is sealed; what the service is asked meanwhile greys names and changes nothing.
// What is asked and what is sealed leaves this phone closed (closed.js).
import { deliver, freshSecret, letter, refused } from "./closed.js";
import { ownCopy, remember } from "./kept.js";

const form = document.getElementById("sheet-form");
const taps = document.getElementById("taps");
const seats = [...taps.querySelectorAll("[data-seat]")];
const rubbers = [...taps.querySelectorAll("[data-rubber]")];
const chips = [...taps.querySelectorAll("[data-player]")];
const said = taps.querySelector(".why");
const worth = document.getElementById("worth");
const undo = document.querySelector("[data-undo]");
const seal = document.querySelector("[data-seal]");
const cover = document.querySelector("[data-cover]");
const sealWords = seal.textContent;
const coverWords = cover.textContent;
const draft = `tiewright:draft:${form.dataset.exchange}:${form.dataset.tie}:${form.dataset.club}`;
const kept = `tiewright:kept:${form.dataset.exchange}:${form.dataset.tie}:${form.dataset.club}`;
const list = (seat) => form.elements[seat.dataset.seat];
const values = () => seats.map((seat) => list(seat).value);
const names = new Map(chips.map((chip) => [chip.dataset.player, chip.querySelector("b").textContent]));
let whyNot = new Map(); // seat and player: why the player cannot be named there
const past = []; // what Undo goes back to
let hand = null; // the place that was just emptied, and who stood there
let picked = -1; // the rubber that waits for another one to change with
let asked = 0;
let askTimer = 0;
let sent = null; // what was sent to be sealed and not answered: again as it was, so that it counts once

function readReasons(from) {
  whyNot = new Map();
  for (const seat of seats) {
    for (const option of from.querySelectorAll(`select[name="${seat.dataset.seat}"] option`)) {
      if (option.dataset.why) whyNot.set(`${seat.dataset.seat} ${option.value}`, option.dataset.why);
      option.disabled = false; // a disabled choice would not be sent
    }
  }
}

function next() {
  if (hand && values()[hand.at] === "") return hand.at;
  return values().indexOf("");
}

function set(now, remember = true) {
  if (remember) past.push(values());
  seats.forEach((seat, at) => { list(seat).value = now[at] ?? ""; });
  localStorage.setItem(draft, JSON.stringify({ sealed: taps.dataset.sealed, values: values() }));
  ask();
}

function show(words = "") {
  const now = values();
  const at = next();
  const covered = taps.classList.contains("covered");
  seats.forEach((seat, i) => {
    const name = now[i] ? (covered ? taps.dataset.placed : names.get(now[i])) : i === at ? taps.dataset.next : "";
    seat.textContent = name;
    seat.setAttribute("aria-label", `${seat.dataset.label}: ${name || taps.dataset.empty}`);
    seat.classList.toggle("full", now[i] !== "");
    seat.classList.toggle("up", i === at);
  });
  for (const chip of chips) {
    const code = chip.dataset.player;
    const placed = now.filter((each) => each === code).length >= Number(taps.dataset.most);
    const why = placed ? taps.dataset.isPlaced.replace("{name}", names.get(code))
      : at < 0 ? "" : whyNot.get(`${seats[at].dataset.seat} ${code}`) ?? "";
    chip.classList.toggle("used", why !== "" && !covered);
    chip.dataset.why = why;
    chip.setAttribute("aria-disabled", String(why !== "" || at < 0));
  }
  rubbers.forEach((rubber, i) => rubber.setAttribute("aria-pressed", String(i === picked)));
  const left = now.filter((each) => each === "").length;
  seal.textContent = left === 0 ? sealWords : seal.dataset.toGo.replace("{n}", left);
  seal.classList.toggle("wait", left > 0);
  undo.disabled = past.length === 0;
  said.textContent = words || (covered ? "" : worth.textContent);
}

// All that is filled in, but for what the page itself added.
function filled() {
  const { key, seen, ...fields } = Object.fromEntries(new FormData(form));
  return fields;
}

// Closed on this phone, with a secret made here: nobody on the way reads a name, and the receipt is made here too.
async function sealIt() {
  const state = JSON.stringify(filled());
  if (sent?.state !== state) {
    const secret = freshSecret();
    sent = { state, names: filled(), secret, closed: letter({ ...filled(), step: "seal", secret }) };
  }
  clearTimeout(askTimer);
  asked++;
  seal.disabled = true;
  show(taps.dataset.sealing);
  try {
    const answer = await deliver(sent.closed);
    if (answer.done) {
      remember(form, sent.names, sent.secret);
      return location.assign(form.getAttribute("action"));
    }
    sent = null;
    refused(answer.page);
    readReasons(answer.page);
    show();
  } catch {
    show(form.dataset.notSent);
  }
  seal.disabled = false;
}

// What the service answers to the form as it is filled now. An answer that comes too late for what is chosen is thrown away.
async function answered(step) {
  const mine = ++asked;
  try {
    const answer = await deliver(letter({ ...filled(), step }));
    return answer.ok && mine === asked && answer.page.getElementById("sheet-form") ? answer.page : null;
  } catch {
    return null; // without network every name can be tapped; the service still refuses what the conditions forbid
  }
}

// Which names are left, and what the sheet is worth.
function ask() {
  asked++;
  worth.textContent = "";
  clearTimeout(askTimer);
  askTimer = setTimeout(async () => {
    const page = await answered("choose");
    if (!page) return;
    readReasons(page);
    worth.textContent = page.getElementById("worth").textContent;
    show(said.textContent);
  }, 200);
}

// Chance is drawn by the service, from the club's own secret.
async function shuffle() {
  hand = null;
  show(taps.dataset.drawing);
  clearTimeout(askTimer);
  const page = await answered("shuffle");
  if (!page) return show();
  form.elements.draws.value = page.getElementById("sheet-form").elements.draws.value;
  set(seats.map((seat) => page.getElementById(seat.dataset.seat).value));
  show();
}

function tapName(chip) {
  const at = next();
  if (chip.dataset.why) return show(chip.dataset.why);
  if (at < 0) return;
  const now = values();
  now[at] = chip.dataset.player;
  hand = null;
  set(now);
  show();
}

function tapSeat(at) {
  const now = values();
  if (hand && at !== hand.at) { // the one in hand goes here, who stood here goes where that one was
    now[hand.at] = now[at];
    now[at] = hand.who;
    const whole = hand.who === "";
    hand = null;
    set(now, whole); // the tap that emptied the first place is what Undo goes back to
    return show();
  }
  if (now[at] === "") {
    hand = hand ? null : { at, who: "" };
    return show();
  }
  hand = { at, who: now[at] };
  now[at] = "";
  set(now);
  show(taps.classList.contains("covered") ? "" : taps.dataset.inHand.replace("{name}", names.get(hand.who)));
}

function tapRubber(at) {
  hand = null;
  if (picked < 0 || picked === at) {
    picked = picked === at ? -1 : at;
    return show(picked < 0 ? "" : taps.dataset.rubberInHand.replace("{n}", rubbers[at].dataset.rubber));
  }
  const order = rubbers.map((_, i) => i);
  order[at] = picked;
  order[picked] = at;
  picked = -1;
  reorder(order);
}

function reorder(order) {
  const now = values();
  set(order.flatMap((from) => [now[2 * from], now[2 * from + 1]]));
  show();
}

// Covered from neighbours: by a press, after two idle minutes, when the screen is left, and again 20 seconds after a look.
let idle = 0;
function hide(on) {
  taps.classList.toggle("covered", on);
  cover.textContent = on ? cover.dataset.show : coverWords;
  show();
}
function wait(ms) {
  clearTimeout(idle);
  idle = setTimeout(() => hide(true), ms);
}
cover.addEventListener("click", () => {
  const look = taps.classList.contains("covered");
  hide(!look);
  wait(look ? 20_000 : 120_000);
});
document.addEventListener("visibilitychange", () => { if (document.hidden) hide(true); });

taps.addEventListener("click", (press) => {
  const button = press.target.closest("button");
  if (!button) return;
  if (!taps.classList.contains("covered")) wait(120_000);
  if (button.dataset.player) tapName(button);
  else if (button.dataset.seat) tapSeat(seats.indexOf(button));
  else if (button.dataset.rubber) tapRubber(rubbers.indexOf(button));
  else if (button.hasAttribute("data-from-last")) { hand = null; set(taps.dataset.last.split(" ").map((each) => each === "-" ? "" : each)); show(); }
  else if (button.hasAttribute("data-shuffle")) shuffle();
});
undo.addEventListener("click", () => {
  hand = null;
  if (past.length > 0) set(past.pop(), false);
  show();
});
form.addEventListener("change", () => { ask(); show(); });
form.addEventListener("submit", (press) => {
  press.preventDefault();
  if (press.submitter?.value === "shuffle") shuffle();
  else if (press.submitter?.value === "choose") ask();
  else if (!seal.disabled) sealIt();
});

// A proposal that was taken comes behind the # of the address; what another phone kept comes there too, with its secret.
function taken() {
  const sheet = new URLSearchParams(location.hash.slice(1));
  if (sheet.has("secret") || !seats.some((seat) => sheet.has(seat.dataset.seat))) return null;
  history.replaceState(null, "", location.pathname);
  return seats.map((seat) => sheet.get(seat.dataset.seat) ?? "");
}

const stored = JSON.parse(localStorage.getItem(draft) ?? "null");
const proposed = taken();
const given = Boolean(taps.dataset.given) || proposed !== null;
readReasons(document);
if (stored && stored.sealed !== taps.dataset.sealed) localStorage.removeItem(draft);
if (proposed) set(proposed, false);
else if (given) set(values(), false);
else if (stored && stored.sealed === taps.dataset.sealed) set(stored.values, false);
else if (values().every((each) => each === "")) {
  const copy = ownCopy(form);
  const { names: onPhone } = JSON.parse(localStorage.getItem(kept) ?? "null") ?? copy ?? { names: {} };
  seats.forEach((seat) => { list(seat).value = onPhone[seat.dataset.seat] ?? ""; });
  if (copy) ask();
}
taps.hidden = undo.hidden = cover.hidden = false;
form.classList.add("by-taps");
hide(taps.dataset.sealed !== "0" && !given); // who looks at a sealed sheet has to want to
wait(120_000);
