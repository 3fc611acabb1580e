// Keys for a game that is noted while its film runs. Without scripts the text is typed and a button shows how it stands.
const form = document.querySelector("form[data-noting]");
const text = form.elements.rallies;
const film = form.querySelector("video");
const undone = [];

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

// At the end of the text keys note; further up it is a text like any other.
text.addEventListener("keydown", (press) => {
  if (press.ctrlKey || press.metaKey || press.altKey || text.selectionStart !== text.value.length) return;
  const key = press.key === "Enter" ? " " : press.key.toLowerCase();
  if (key.length !== 1 || !(KEYS + " z").includes(key)) return;
  press.preventDefault();
  type(key);
});

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
  const button = press.target.closest("button[data-key]");
  if (button) type(button.dataset.key);
});

// The film stays on this device: the page plays the file that was chosen.
document.getElementById("film-file").addEventListener("change", (chosen) => {
  const [file] = chosen.target.files;
  if (film.src) URL.revokeObjectURL(film.src);
  film.hidden = !file;
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
    document.getElementById("next").textContent = page.getElementById("next").textContent;
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

for (const each of form.querySelectorAll("[data-film], [data-pad]")) each.hidden = false;
if (text.value) read();
