// What this phone keeps of the own sheet. Of one that was sealed here: its names and secret, for a network that can be listened to brings
// no name back. Of one that is kept here: all there is, only the receipt goes to the desk. Without scripts the buttons stay hidden.
import { deliver, fingerprint, freshSecret, letter, receiptOf, receipts, refused } from "./closed.js";

const TWO_DAYS = 2 * 24 * 60 * 60 * 1000;
const place = (what, form) => `tiewright:${what}:${form.dataset.exchange}:${form.dataset.tie}:${form.dataset.club}`;
const stored = (what, form) => JSON.parse(localStorage.getItem(place(what, form)) ?? "null");

function chosen(form) {
  const names = {};
  for (const each of form.querySelectorAll("select")) names[each.name] = each.value;
  return names;
}

// A sheet that this phone sealed.
export function remember(form, names, secret) {
  localStorage.setItem(place("sealed", form), JSON.stringify({ secret, names, receipt: receiptOf(form, names, secret), at: Date.now() }));
}

// What this phone sealed, as long as the desk shows its receipt: another sheet may have been sealed since.
export function ownCopy(form) {
  const copy = stored("sealed", form);
  return copy && receipts().includes(copy.receipt) ? copy : null;
}

// The receipt was made on this phone and at the desk: here they are compared, and the names stand beside it from this phone alone.
function compare(form) {
  const own = document.getElementById("own-sheet");
  if (!own) return;
  const copy = ownCopy(form);
  const line = own.querySelector("[data-copy-line]");
  line.textContent = copy ? own.dataset.same : stored("sealed", form) ? own.dataset.other : line.textContent;
  line.classList.toggle("error", !copy && Boolean(stored("sealed", form)));
  line.hidden = line.textContent === "";
  if (!own.dataset.air) return;
  own.querySelector("[data-names]").hidden = !copy;
  if (copy) fill(form, own, copy.names);
}

function fill(form, own, names) {
  const said = new Map([...document.querySelectorAll("[data-player]")].map((each) => [each.dataset.player, each.querySelector("b").textContent]));
  const rubbers = [...form.querySelectorAll("fieldset[data-rubber]")].map((each) => each.dataset.rubber);
  [...own.querySelectorAll(".rubbers .names")].forEach((row, i) => {
    row.replaceChildren(...["first", "second"].map((seat) => {
      const code = names[`sheet-${rubbers[i]}-${seat}`] ?? "";
      const player = document.createElement("span");
      player.className = code ? "player" : "blank";
      player.textContent = said.get(code) ?? code;
      return player;
    }));
  });
}

// Sends the form without the lists, so that no name goes along by mistake.
function send(form, fields) {
  for (const each of form.querySelectorAll("select, button")) each.disabled = true;
  for (const [name, value] of Object.entries(fields)) {
    const field = document.createElement("input");
    field.type = "hidden";
    field.name = name;
    field.value = value;
    form.append(field);
  }
  form.submit();
}

// The service learns no name of a kept sheet, so the question about somebody hurt is asked here.
function askFirst(form, names) {
  const hurt = form.dataset.hurt.split(" ").filter((code) => Object.values(names).includes(code));
  if (hurt.length > 0 && !form.querySelector("input[name=hurt-asked]:checked")) throw new Error(form.dataset.askHurt);
}

function keep(form) {
  const names = chosen(form);
  askFirst(form, names);
  const secret = freshSecret();
  const receipt = receiptOf(form, names, secret);
  localStorage.setItem(place("kept", form), JSON.stringify({ secret, names }));
  send(form, { step: "keep", receipt });
}

async function handIn(form) {
  const { secret, names } = stored("kept", form);
  const hurt = form.querySelector("input[name=hurt-asked]:checked") ? { "hurt-asked": "yes" } : {};
  const answer = await reached(form, deliver(letter({ step: "hand-in", secret, ...names, ...hurt })));
  if (!answer.done) return refused(answer.page);
  remember(form, names, secret);
  location.assign(form.getAttribute("action"));
}

async function reached(form, delivered) {
  try {
    return await delivered;
  } catch {
    throw new Error(form.dataset.notSent);
  }
}

// What another phone kept can be brought along behind the # of the address, which no browser sends: it is taken if it makes
// the receipt that this page shows.
function take(form) {
  const { secret, ...names } = Object.fromEntries(new URLSearchParams(location.hash.slice(1)));
  if (!secret || stored("kept", form) || !receipts().includes(receiptOf(form, names, secret))) return;
  localStorage.setItem(place("kept", form), JSON.stringify({ secret, names }));
  location.replace(location.pathname);
}

const form = document.getElementById("sheet-form");

document.addEventListener("click", async (press) => {
  const button = press.target.closest("[data-keep], [data-hand-in]");
  if (!button) return;
  press.preventDefault();
  try {
    if (button.hasAttribute("data-keep")) keep(form);
    else await handIn(form);
  } catch (wrong) {
    form.querySelector("[data-kept-note]").textContent = wrong.message;
  }
});

// On a network that can be listened to, the club is told by the phone that sealed: it alone knows the sheet's secret.
document.getElementById("tell")?.addEventListener("submit", async (press) => {
  const copy = ownCopy(form);
  if (!copy || !document.getElementById("own-sheet")?.dataset.air) return;
  press.preventDefault();
  try {
    const answer = await reached(form, deliver(letter({ secret: copy.secret }, press.target)));
    if (answer.done) location.assign(form.getAttribute("action"));
    else refused(answer.page, press.target);
  } catch (wrong) {
    press.target.append(wrong.message);
  }
});

// The key that this page closes for, to be compared by people; a phone says when it is another one than before.
function sayKey() {
  const line = document.querySelector("[data-key-line]");
  const known = localStorage.getItem("tiewright:key");
  localStorage.setItem("tiewright:key", form.dataset.to);
  if (!line) return;
  const words = known && known !== form.dataset.to ? line.dataset.other : line.dataset.words;
  line.textContent = words.replace("{key}", fingerprint(form.dataset.to));
  line.classList.toggle("error", words === line.dataset.other);
}

function forget() {
  for (const key of Object.keys(localStorage)) {
    if (key.startsWith("tiewright:sealed:") && JSON.parse(localStorage.getItem(key)).at < Date.now() - TWO_DAYS) localStorage.removeItem(key);
  }
}

if (form) {
  forget();
  take(form);
  sayKey();
  compare(form);
  for (const each of form.querySelectorAll("[data-keep]")) each.hidden = false;
  for (const each of document.querySelectorAll("[data-hand-in]")) each.hidden = !stored("kept", form);
}
