// Where the browser trusts the address: pages that anybody may read open also without a network, as they stood when they were last seen,
// and say so first. Everything else goes to the desk as if this were not here.
const PAGES = "pages";
const FILES = "files";
const KEPT = /^\/(|plan(\/clubs)?|ties|tie\/[^/]+|tables|bracket|needs|notices|clubs|club\/[^/]+|player\/[^/]+|conditions|board)$/;
const A_DAY = 18 * 60 * 60 * 1000; // ms

addEventListener("install", () => skipWaiting());
addEventListener("activate", (event) => event.waitUntil(clients.claim()));

// A page as it stood: it says how old it is before anything else, and holds nothing that could be sent.
function old(html) {
  const asOf = html.match(/id="page-version"[^>]*>([^<]*)</)?.[1].trim() ?? "";
  const words = (html.match(/data-kept="([^"]*)"/)?.[1] ?? "").replace("{asOf}", asOf);
  return html
    .replace(/<form[\s\S]*?<\/form>/g, "")
    .replace(/ data-(live|deadline|since)(="[^"]*")?/g, "")
    .replace(/<body class="/, '<body data-away data-old class="kept ')
    .replace(/<div class="columns/, `<p class="error" id="kept-line" role="status">${words}</p><div class="columns`);
}

async function page(request) {
  const cache = await caches.open(PAGES);
  try {
    const answer = await fetch(request);
    if (answer.ok && !answer.redirected) {
      const headers = new Headers(answer.headers);
      headers.delete("Content-Encoding");
      headers.delete("Content-Length");
      headers.set("Kept-At", String(Date.now()));
      await cache.put(request.url, new Response(await answer.clone().text(), { headers }));
    }
    return answer;
  } catch (noNetwork) {
    const kept = await cache.match(request.url);
    if (!kept || Date.now() - Number(kept.headers.get("Kept-At")) > A_DAY) throw noNetwork;
    return new Response(old(await kept.text()), { headers: kept.headers });
  }
}

async function file(request) {
  const cache = await caches.open(FILES);
  try {
    const answer = await fetch(request);
    if (answer.ok) await cache.put(request.url, answer.clone());
    return answer;
  } catch (noNetwork) {
    const kept = await cache.match(request.url);
    if (kept) return kept;
    throw noNetwork;
  }
}

addEventListener("fetch", (event) => {
  const { pathname, search, origin } = new URL(event.request.url);
  if (origin !== location.origin) return;
  // somebody else comes in, or nobody is here any more: what was kept was theirs
  if (pathname === "/leave" || pathname.startsWith("/enter/")) event.waitUntil(caches.delete(PAGES));
  else if (event.request.method !== "GET") return;
  else if (event.request.mode === "navigate" && KEPT.test(pathname) && !search) event.respondWith(page(event.request));
  else if (pathname.startsWith("/static/")) event.respondWith(file(event.request));
});
