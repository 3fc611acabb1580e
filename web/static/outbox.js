// What was typed goes onto this phone first and from there to the desk, so that a hall without wifi loses nothing: forms marked
// data-outbox are kept in the browser's own database until the desk has answered, and are sent again by any page of this phone.
// Each goes with its form's key, so that it counts once however often it is sent.
import { openDB } from "./idb.js";

const PATIENCE = 15_000; // ms until an answer counts as none
const section = document.getElementById("outbox");
const { reader } = section.dataset;
const store = openDB("tiewright", 1, {
  upgrade(db) {
    db.createObjectStore("forms", { keyPath: "id", autoIncrement: true });
    db.createObjectStore("pages", { keyPath: "path" });
  },
});
let wait = 3_000;
let timer = 0;

const all = async () => (await store).getAll("forms");
const isWaiting = (entry) => !entry.reason && entry.reader === reader;

// Sends one entry. {at}: it arrived, and this page shows it; {reason}: the desk asks or refuses; {}: nobody answered.
async function send(entry) {
  try {
    const answer = await fetch(entry.action, {
      method: "POST",
      body: new URLSearchParams(entry.body),
      headers: { "Sent-From": "outbox" },
      credentials: "same-origin",
      signal: AbortSignal.timeout(PATIENCE),
    });
    if (answer.status === 204) return { at: answer.headers.get("Location") };
    if (answer.redirected && answer.ok) return { at: answer.url };
    if (answer.status >= 500 || answer.status === 429 || answer.status === 408) return {};
    if ([401, 403, 404, 410].includes(answer.status)) return { reason: section.dataset.ended };
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const reasons = [...page.querySelectorAll("#refusal li")].map((each) => each.textContent.trim());
    return { reason: reasons.join(" ") || section.dataset.asks };
  } catch {
    return {};
  }
}

// As the browser itself would send it: the page that comes says what is asked, with all that was typed.
function plainly(form, button) {
  if (button?.name) {
    form.append(Object.assign(document.createElement("input"), { type: "hidden", name: button.name, value: button.value }));
  }
  form.submit();
}

function lead(at) {
  const to = new URL(at, location.href);
  const same = to.pathname === location.pathname && to.search === location.search;
  location.assign(to);
  if (same && to.hash) location.reload();
}

function typed(form, button) {
  const body = new URLSearchParams(new FormData(form));
  if (button?.name) body.append(button.name, button.value);
  body.append("device-time", new Date().toISOString());
  return body.toString();
}

async function hold(form, button) {
  const chosen = [...form.querySelectorAll("select")].map((each) => each.selectedOptions[0]?.textContent.trim());
  const said = [form.querySelector(".echo:not([hidden])")?.textContent, ...chosen].filter((each) => each).join(", ");
  const entry = {
    action: form.getAttribute("action"),
    body: typed(form, button),
    reader,
    page: document.body.dataset.posted === undefined ? location.pathname : form.getAttribute("action"),
    label: [form.dataset.outbox, said].filter((each) => each).join(": "),
    at: new Date().toISOString(),
  };
  const writing = (await store).transaction("forms", "readwrite", { durability: "strict" });
  entry.id = await writing.store.add(entry);
  await writing.done; // on the phone's own disk
  return entry;
}

document.addEventListener("submit", async (press) => {
  const form = press.target;
  if (!form.matches("form[data-outbox]") || press.defaultPrevented) return;
  press.preventDefault();
  const buttons = [...form.querySelectorAll("button")];
  let entry;
  try {
    entry = await hold(form, press.submitter);
  } catch {
    return plainly(form, press.submitter); // a window that keeps nothing
  }
  for (const each of buttons) each.disabled = true;
  const { at, reason } = await send(entry);
  if (!at && !reason) {
    await show();
    section.scrollIntoView({ block: "nearest" });
    return soon();
  }
  await (await store).delete("forms", entry.id);
  if (at) lead(at);
  else plainly(form, press.submitter);
});

// In the order in which they were typed; where nobody answers, the rest waits too.
async function flush() {
  timer = 0;
  let arrived = 0;
  for (const entry of (await all()).filter(isWaiting)) {
    const { at, reason } = await send(entry);
    if (!at && !reason) break;
    if (at) await (await store).delete("forms", entry.id);
    else await (await store).put("forms", { ...entry, reason });
    if (at) arrived++;
  }
  wait = arrived > 0 ? 3_000 : Math.min(wait * 2, 30_000);
  const left = await show();
  if (arrived > 0) section.querySelector("[role=status]").textContent = section.dataset.arrived.replace("{n}", arrived);
  if (arrived > 0) section.hidden = false;
  if (left > 0) soon();
}

function soon() {
  if (timer === 0) timer = setTimeout(flush, wait);
}

// One line for each form that is not at the desk; returns how many will be sent by themselves.
async function show() {
  const entries = await all();
  section.hidden = entries.length === 0;
  section.querySelector("h2").textContent = section.dataset.count.replace("{n}", entries.length);
  section.querySelector("ul").replaceChildren(...entries.map(line));
  return entries.filter(isWaiting).length;
}

function line(entry) {
  const item = section.querySelector("template").content.firstElementChild.cloneNode(true);
  const at = new Date(entry.at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
  item.querySelector("b").textContent = entry.label;
  item.querySelector(".quiet").textContent = section.dataset.typed.replace("{time}", at);
  item.querySelector("span.reason").textContent = entry.reader === reader ? entry.reason ?? "" : section.dataset.other.replace("{who}", entry.reader);
  const look = item.querySelector("a");
  look.href = entry.page;
  look.hidden = !entry.reason;
  const drop = item.querySelector("button");
  let sure = false; // the second press takes it away
  drop.addEventListener("click", async () => {
    if (!sure) {
      sure = true;
      drop.textContent = section.dataset.sure;
      return;
    }
    await (await store).delete("forms", entry.id);
    show();
  });
  return item;
}

addEventListener("online", () => {
  clearTimeout(timer);
  flush();
});
if (await show() > 0) flush();
