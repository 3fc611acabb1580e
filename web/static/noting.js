// Keys for a game that is noted while its film runs. Without scripts the text is typed and a button shows how it stands.
const form = document.querySelector("form[data-noting]");
const text = form.elements.rallies;
const film = form.querySelector("video");
const pad = form.querySelector("[data-pad]");
const undone = [];
let who = ""; // whose the last ball was, pressed before how it ended

const KEYS = "jkl0?nopivbasdqwertf,./cyhgmux=1234";
const AFTER_THE_END = ["nopivb", "c", "yhg", "mux"]; // what may be said of a rally that has ended, each once

const lastLine = () => text.value.slice(text.value.lastIndexOf("\n") + 1);
const keysOf = (line) => line.replace(/@\S*/g, "");
const hasEnded = (line) => /[0?]|[jkl]\s*[1-4]/.test(keysOf(line));
const said = (group, line) => [...group].some((key) => keysOf(line).includes(key));

function filmTime() {
  if (!film.currentSrc) return "";
  const seconds = Math.floor(film.currentTime);
  return `@${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")} `;
}

function nextRally() {
  const line = lastLine();
  const before = text.value.slice(0, text.value.length - line.length);
  return keysOf(line).trim() ? `${text.value}\n${filmTime()}` : before + filmTime();
}

function withKey(key) {
  if ("1234".includes(key)) return text.value.trimEnd() + key;
  const line = lastLine();
  const group = AFTER_THE_END.find((each) => each.includes(key));
  if (hasEnded(line) && (!group || said(group, line))) return `${text.value}\n${key}`;
  return text.value + (line && !line.endsWith(" ") ? " " : "") + key;
}

function type(key) {
  const before = text.value;
  if (key === "z") text.value = undone.pop() ?? before.trimEnd().slice(0, -1);
  else {
    undone.push(before);
    text.value = key === " " ? nextRally() : withKey(key);
  }
  text.scrollTop = text.scrollHeight;
  text.dispatchEvent(new Event("input", { bubbles: true }));
}

// Keys note wherever the focus is, on the film too; in a field that is filled in they write. In the text they note at its end;
// further up it is a text like any other. On a button, space and Enter press it.
const fills = (at) => at !== text && at.matches?.("input, select, textarea");
document.addEventListener("keydown", (press) => {
  const at = press.target;
  if (press.ctrlKey || press.metaKey || press.altKey || fills(at)) return;
  if (at === text && text.selectionStart !== text.value.length) return;
  if (at !== text && (press.key === "ArrowLeft" || press.key === "ArrowRight") && film.currentSrc) {
    press.preventDefault();
    film.currentTime += press.key === "ArrowLeft" ? -5 : 5;
    return;
  }
  const key = press.key === "Enter" ? " " : press.key.toLowerCase();
  if (key.length !== 1 || !(KEYS + " z").includes(key)) return;
  if (key === " " && at.matches?.("button, a, summary")) return;
  press.preventDefault();
  press.stopPropagation();
  type(key);
}, true);

// The film by thumb: back five seconds, on and off, half as fast, a picture further, and when the serve was struck.
const STEP = 1 / 25;
const keysOfFilm = {
  back: () => { film.currentTime = Math.max(0, film.currentTime - 5); },
  pause: () => { if (film.paused) film.play(); else film.pause(); },
  slow: (button) => {
    film.playbackRate = film.playbackRate === 1 ? 0.5 : 1;
    button.setAttribute("aria-pressed", String(film.playbackRate !== 1));
  },
  step: () => { film.pause(); film.currentTime += STEP; },
};
const pause = pad.querySelector("[data-film=pause]");
for (const happens of ["play", "pause"]) {
  film.addEventListener(happens, () => { pause.textContent = film.paused ? pad.dataset.play : pad.dataset.pause; });
}

// A name and how it ended, in either order, end a rally.
function pick(player) {
  who = who === player ? "" : player;
  for (const each of pad.querySelectorAll(".whose button")) each.setAttribute("aria-pressed", String(each.dataset.key === who));
}
function pressed(key) {
  const waits = /[jkl]$/.test(lastLine());
  if ("1234".includes(key)) {
    if (waits) type(key);
    else pick(key);
    return;
  }
  type(key);
  if (!"jkl".includes(key)) return;
  if (who) {
    type(who);
    undone.pop(); // the two presses are one rally: Undo takes it back whole
  } else form.querySelector("[data-unsent]").textContent = pad.dataset.whoFirst;
  if (who) pick(who);
}

for (const each of form.querySelectorAll("kbd[data-key]")) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "button";
  button.dataset.key = each.dataset.key;
  button.textContent = each.textContent;
  button.setAttribute("aria-label", `${each.textContent}: ${each.closest("div").querySelector("dd").textContent}`);
  each.replaceWith(button);
}
form.addEventListener("click", (press) => {
  const button = press.target.closest("button[data-key], button[data-film]");
  if (!button) return;
  if (button.dataset.key === undefined) keysOfFilm[button.dataset.film](button);
  else if (pad.contains(button)) pressed(button.dataset.key);
  else type(button.dataset.key);
});

// The film stays on this device: the page plays the file that was chosen.
document.getElementById("film-file").addEventListener("change", (chosen) => {
  const [file] = chosen.target.files;
  if (film.src) URL.revokeObjectURL(film.src);
  film.hidden = pad.querySelector(".film-keys").hidden = !file;
  pad.querySelector(".screen").classList.toggle("runs", Boolean(file));
  if (file) film.src = URL.createObjectURL(file);
});

// After each change the service says how it stands; only the last answer counts.
let asked = new AbortController();
let soon = 0;
async function read() {
  asked.abort();
  asked = new AbortController();
  const { signal } = asked;
  const body = new URLSearchParams(new FormData(form));
  body.set("do", "read");
  const news = form.querySelector("[data-unsent]");
  try {
    const answer = await fetch(form.action, { method: "POST", body, signal });
    if (!answer.ok) throw new Error(answer.status);
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (signal.aborted) return;
    document.getElementById("stands").replaceChildren(...page.getElementById("stands").children);
    for (const id of ["next", "score", "noted"]) document.getElementById(id).textContent = page.getElementById(id).textContent;
    for (const each of form.querySelectorAll("[data-player]")) {
      each.textContent = page.querySelector(`[data-player="${each.dataset.player}"]`).textContent;
    }
    news.textContent = "";
  } catch {
    if (!signal.aborted) news.textContent = news.dataset.unsent;
  }
}
form.addEventListener("input", (change) => {
  if (change.isTrusted && change.target === text) undone.length = 0; // changed by hand: older texts are not brought back over it
  clearTimeout(soon);
  soon = setTimeout(read, 120);
});

pad.hidden = false;
// On a phone the pad is enough: the text stays folded until something in it must be put right.
document.getElementById("as-text").open = matchMedia("(min-width: 56em)").matches || document.getElementById("refusal") !== null;
if (text.value) read();
