// What was last seen of today stays readable without wifi, and always says how old it is. Pages that anybody may read are kept on this
// phone, as they stood, without their forms; a link that cannot be followed shows the kept page in place of the browser's own error. Where
// the browser trusts the address, sw.js does the same for an address that is opened or loaded again.
import { openDB } from "./idb.js";

const KEPT = /^\/(|plan(\/clubs)?|ties|tie\/[^/]+|tables|bracket|needs|notices|clubs|club\/[^/]+|player\/[^/]+|conditions|board)$/;
const A_DAY = 18 * 60 * 60 * 1000; // ms: today, and not tomorrow
const PATIENCE = 4_000; // ms until a page counts as out of reach
const bar = document.getElementById("live-bar");
const reader = document.body.dataset.reader;
const store = openDB("tiewright", 1, {
  upgrade(db) {
    db.createObjectStore("forms", { keyPath: "id", autoIncrement: true });
    db.createObjectStore("pages", { keyPath: "path" });
  },
});
let shown = false; // a kept page stands here, and its address

const isAway = () => !navigator.onLine || document.body.dataset.away !== undefined;

// Nothing in it moves, counts down or can be sent.
function still(columns) {
  const copy = columns.cloneNode(true);
  for (const each of copy.querySelectorAll("form, script, [data-print]")) each.remove();
  for (const each of copy.querySelectorAll("[data-live], [data-deadline], [data-since]")) {
    for (const name of ["data-live", "data-deadline", "data-since"]) each.removeAttribute(name);
  }
  return copy.outerHTML;
}

async function keep() {
  if (shown || isAway() || !KEPT.test(location.pathname) || location.search || document.body.dataset.posted !== undefined) return;
  await (await store).put("pages", {
    path: location.pathname,
    reader,
    title: document.title,
    html: still(document.querySelector(".columns")),
    asOf: document.getElementById("page-version").textContent.trim(),
    at: Date.now(),
  });
}

// Of somebody else, or of another day.
async function forgetOld() {
  const pages = await (await store).getAll("pages");
  for (const page of pages) {
    if (page.reader !== reader || Date.now() - page.at > A_DAY) await (await store).delete("pages", page.path);
  }
}

function say(words) {
  let line = document.getElementById("kept-line");
  if (!line) {
    line = Object.assign(document.createElement("p"), { id: "kept-line", className: "error" });
    line.setAttribute("role", "status");
    document.querySelector(".columns").before(line);
  }
  line.textContent = words;
  line.scrollIntoView({ block: "nearest" });
}

async function show(path) {
  const page = await (await store).get("pages", path);
  if (!page || page.reader !== reader) {
    say(bar.dataset.unseen);
    return;
  }
  shown = true;
  const kept = new DOMParser().parseFromString(page.html, "text/html").querySelector(".columns");
  document.querySelector(".columns").replaceWith(document.importNode(kept, true));
  document.title = page.title;
  if (location.pathname !== path) history.pushState({}, "", path);
  document.body.classList.add("kept");
  say(bar.dataset.kept.replace("{asOf}", page.asOf));
}

async function isThere(address) {
  try {
    return (await fetch(address, { credentials: "same-origin", signal: AbortSignal.timeout(PATIENCE) })).status < 500;
  } catch {
    return false;
  }
}

document.addEventListener("click", async (press) => {
  const link = press.target.closest("a[href]");
  if (!link || press.defaultPrevented || press.button !== 0 || press.ctrlKey || press.metaKey || press.shiftKey || !isAway()) return;
  const to = new URL(link.href, location.href);
  if (to.origin !== location.origin || (to.pathname === location.pathname && to.hash)) return;
  press.preventDefault();
  if (await isThere(to)) location.assign(to);
  else await show(to.pathname);
});

// Back within kept pages.
addEventListener("popstate", () => {
  if (shown) show(location.pathname);
});

// As soon as the desk answers again, what is kept gives way to what is.
function anew() {
  if (shown || document.body.dataset.old !== undefined) location.reload();
}
document.addEventListener("connection-back", anew);
addEventListener("online", anew);

document.addEventListener("submit", async (press) => {
  if (new URL(press.target.action, location.href).pathname === "/leave") await (await store).clear("pages");
}, { capture: true });

document.addEventListener("visibilitychange", () => {
  if (document.hidden) keep().catch(() => {});
});

async function helper() {
  const how = document.getElementById("kept-how");
  try {
    if (!isSecureContext) throw new Error("plain http");
    await navigator.serviceWorker.register("/static/sw.js", { scope: "/" });
    how.textContent = how.dataset.opens;
  } catch {
    how.textContent = how.dataset.stays;
  }
  how.hidden = false;
}

try {
  await forgetOld();
  await keep();
  await helper();
} catch {
  // a window that keeps nothing: the page works as it did without
}
