// A sheet kept on the captain's phone: the names and the secret stay in this browser, only the receipt goes to the desk.
// Without scripts, or without the browser's own cryptography (plain HTTP), the buttons stay hidden and a line says why.
const digits = (bytes) => [...new Uint8Array(bytes)].map((each) => each.toString(16).padStart(2, "0")).join("");
const place = (form) => `tiewright:kept:${form.dataset.exchange}:${form.dataset.tie}:${form.dataset.club}`;
const stored = (form) => JSON.parse(localStorage.getItem(place(form)) ?? "null");

function chosen(form) {
  const names = {};
  for (const each of form.querySelectorAll("select")) names[each.name] = each.value;
  return names;
}

// Codes stand in the order of the Unicode numbers of their characters; sort() alone goes by halves of rare ones.
function byNumber(one, other) {
  const [a, b] = [[...one], [...other]];
  const at = a.findIndex((each, i) => each !== b[i]);
  return at < 0 ? a.length - b.length : a[at].codePointAt(0) - (b[at]?.codePointAt(0) ?? -1);
}

// The text that a receipt is made over; see the page about receipts.
function canonical(form, names, secret) {
  const lines = [...form.querySelectorAll("fieldset[data-rubber]")].map((each) => {
    const number = each.dataset.rubber;
    const pair = [names[`sheet-${number}-first`], names[`sheet-${number}-second`]].filter((name) => name).sort(byNumber);
    if (pair.length === 1) throw new Error(form.dataset.alone);
    return `${number},${pair.join(",") || ","}`;
  });
  return [secret, form.dataset.tie, form.dataset.club, ...lines].join("\n") + "\n";
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

async function keep(form) {
  const secret = digits(crypto.getRandomValues(new Uint8Array(32)));
  const names = chosen(form);
  askFirst(form, names);
  const text = new TextEncoder().encode(canonical(form, names, secret));
  const receipt = digits(await crypto.subtle.digest("SHA-256", text));
  localStorage.setItem(place(form), JSON.stringify({ secret, names }));
  send(form, { step: "keep", receipt });
}

// What another phone kept can be brought along behind the # of the address, which no browser sends: it is taken if it makes
// the receipt that this page shows.
async function take(form) {
  const { secret, ...names } = Object.fromEntries(new URLSearchParams(location.hash.slice(1)));
  if (!secret || stored(form) || !globalThis.crypto?.subtle) return;
  const text = new TextEncoder().encode(canonical(form, names, secret));
  const receipt = digits(await crypto.subtle.digest("SHA-256", text));
  const shown = [...document.querySelectorAll(".receipt .code")].map((each) => each.textContent.replace(/\s/g, ""));
  if (!shown.includes(receipt)) return;
  localStorage.setItem(place(form), JSON.stringify({ secret, names }));
  location.replace(location.pathname);
}

document.addEventListener("click", async (press) => {
  const button = press.target.closest("[data-keep], [data-hand-in]");
  if (!button) return;
  press.preventDefault();
  const form = button.form;
  try {
    if (button.hasAttribute("data-keep")) return await keep(form);
    const { secret, names } = stored(form);
    send(form, { step: "hand-in", secret, ...names });
  } catch (wrong) {
    form.querySelector("[data-kept-note]").textContent = wrong.message;
  }
});

function show() {
  const form = document.getElementById("sheet-form");
  if (!form) return;
  take(form);
  const can = Boolean(globalThis.crypto?.subtle);
  for (const each of form.querySelectorAll("[data-keep]")) each.hidden = !can;
  for (const each of document.querySelectorAll("[data-hand-in]")) each.hidden = !stored(form);
  const note = form.querySelector("[data-kept-note]");
  if (note && !can) note.textContent = form.dataset.plain;
}
show();
