// What a form or sheet needs beyond plain HTML. Everything here is a help: without it the page still works.
const offset = Date.parse(document.querySelector('meta[name="server-now"]')?.content ?? "") - Date.now() || 0;
const serverNow = () => Date.now() + offset; // the service's clock, for a phone's may be wrong

// Countdown to a deadline.
function left(ms) {
  const seconds = Math.ceil(ms / 1000);
  const two = (n) => String(n).padStart(2, "0");
  if (seconds >= 3600) return `${Math.floor(seconds / 3600)} h ${two(Math.floor(seconds / 60) % 60)}`;
  // minutes alone while there are many: 13:42 would be read as a time of the day
  return seconds >= 600 ? `${Math.floor(seconds / 60)} min` : `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
}

function tick() {
  for (const each of document.querySelectorAll("[data-deadline]")) {
    const ms = Date.parse(each.dataset.deadline) - serverNow();
    const open = Date.parse(each.dataset.closes) > serverNow(); // a sheet is taken beyond the deadline where there is grace
    each.querySelector(".left").textContent = ms > 0 ? left(ms) : open ? each.dataset.still : each.dataset.late;
    each.classList.toggle("late", ms < 5 * 60 * 1000 || "held" in each.dataset);
  }
}
if (document.querySelector("[data-deadline]")) {
  tick();
  setInterval(tick, 1000);
}

// Names shown on a captain's screen are covered again when the screen is left.
document.addEventListener("visibilitychange", () => {
  if (document.hidden) for (const each of document.querySelectorAll("details[data-shoulder]")) each.open = false;
});

// Back leads where one came from: this tab remembers its way, and the last other page replaces the one a page would offer.
const way = JSON.parse(sessionStorage.getItem("tiewright:way") ?? "[]");
const at = location.pathname;
while (way.length > 0 && way[way.length - 1].at === at) way.pop();
const before = way.findIndex((each) => each.at === at);
if (before >= 0) way.length = before; // gone back: what lay behind is no longer the way here
const from = way[way.length - 1];
for (const back of from ? document.querySelectorAll(".back:not([data-fixed]) a:first-child") : []) {
  back.href = from.href;
  back.textContent = document.body.dataset.back.replace("{page}", from.title);
}
way.push({ at, href: at + location.search, title: document.querySelector("h1")?.textContent ?? at });
sessionStorage.setItem("tiewright:way", JSON.stringify(way.slice(-20)));

// Cover: what neighbours must not read is hidden by a press, after two idle minutes, and when the screen is left.
const cover = document.querySelector("[data-cover-page]");
if (cover) {
  const open = cover.textContent;
  let idle = 0;
  const hide = (on) => {
    document.body.classList.toggle("covered", on);
    cover.textContent = on ? cover.dataset.show : open;
  };
  const wait = (ms) => {
    clearTimeout(idle);
    idle = setTimeout(() => hide(true), ms);
  };
  cover.hidden = false;
  cover.addEventListener("click", () => {
    const look = document.body.classList.contains("covered");
    hide(!look);
    wait(look ? 20_000 : 120_000);
  });
  addEventListener("pointerdown", (press) => { if (press.target !== cover && !document.body.classList.contains("covered")) wait(120_000); });
  document.addEventListener("visibilitychange", () => { if (document.hidden) hide(true); });
  wait(120_000);
}

// A refusal takes the focus, so that it is read first.
document.getElementById("refusal")?.focus();

// Unsent values of a form marked data-keep (never one with names of a sheet) survive a reload on this phone.
for (const form of document.querySelectorAll("form[data-keep]")) {
  const key = `tiewright:${location.pathname}:${form.dataset.keep}`;
  const fields = () => [...form.elements].filter((each) => each.name && !["hidden", "password", "file", "submit"].includes(each.type));
  const stored = sessionStorage.getItem(key);
  if (stored && !document.getElementById("refusal")) {
    const values = new Map(JSON.parse(stored));
    for (const each of fields()) {
      const name = ["radio", "checkbox"].includes(each.type) ? `${each.name}=${each.value}` : each.name;
      if (!values.has(name)) continue;
      if (["radio", "checkbox"].includes(each.type)) each.checked = values.get(name);
      else each.value = values.get(name);
    }
  }
  form.addEventListener("input", () => {
    sessionStorage.setItem(key, JSON.stringify(fields().map((each) => ["radio", "checkbox"].includes(each.type)
      ? [`${each.name}=${each.value}`, each.checked] : [each.name, each.value])));
  });
  form.addEventListener("submit", () => sessionStorage.removeItem(key));
}

// Print, and copy a text for a club's chat. Over plain HTTP there is no clipboard: the text is selected instead.
document.addEventListener("click", async (press) => {
  const button = press.target.closest("[data-print], [data-copy]");
  if (!button) return;
  if (button.hasAttribute("data-print")) return print();
  const text = document.getElementById(button.dataset.copy);
  text.focus();
  text.select();
  try {
    if (navigator.clipboard) await navigator.clipboard.writeText(text.value);
    else document.execCommand("copy");
    button.nextElementSibling.textContent = button.dataset.copied;
  } catch {
    // the text stays selected: it can be copied by hand
  }
});
