// The desk's board: minutes that run on between two changes. Without it a page shows them as they were when it was made.
const offset = Date.parse(document.querySelector('meta[name="server-now"]')?.content ?? "") - Date.now() || 0;

function count() {
  for (const each of document.querySelectorAll("[data-since]")) {
    const minutes = Math.max(0, Math.floor((Date.now() + offset - Date.parse(each.dataset.since)) / 60000));
    each.textContent = each.dataset.words.replace("{n}", minutes);
  }
}
setInterval(count, 10000);
