// What leaves this phone closed: to the service's public key, so that nobody who listens on the way reads a name. HPKE (RFC 9180) in
// its base mode, with X25519, HKDF-SHA256 and ChaCha20-Poly1305 of the noble libraries; browsers have cryptography of their own only
// over HTTPS. The service's side is the room letterbox.
import { chacha20poly1305, expand, extract, sha256, x25519 } from "./noble.js";

const LENGTH = 4096; // of what is closed, whatever stands in it
const SEED = 32;
const bytes = (text) => new TextEncoder().encode(text);
const digits = (some) => [...some].map((each) => each.toString(16).padStart(2, "0")).join("");
const two = (number) => Uint8Array.of(number >> 8, number & 255);
const KEM = join(bytes("KEM"), two(0x20));
const SUITE = join(bytes("HPKE"), two(0x20), two(0x01), two(0x03));
const NOTHING = new Uint8Array();

function join(...parts) {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

// RFC 9180, 4
const labeledExtract = (suite, salt, label, key) => extract(sha256, join(bytes("HPKE-v1"), suite, bytes(label), key), salt);
const labeledExpand = (suite, key, label, info, length) =>
  expand(sha256, key, join(two(length), bytes("HPKE-v1"), suite, bytes(label), info), length);

// RFC 9180, 4.1 and 5.1: what both sides have in common. The own secret is given by tests alone.
export function setup(publicKey, info, own = x25519.utils.randomSecretKey()) {
  const enc = x25519.getPublicKey(own);
  const shared = labeledExpand(KEM, labeledExtract(KEM, NOTHING, "eae_prk", x25519.getSharedSecret(own, publicKey)),
    "shared_secret", join(enc, publicKey), 32);
  const context = join(Uint8Array.of(0), labeledExtract(SUITE, NOTHING, "psk_id_hash", NOTHING),
    labeledExtract(SUITE, NOTHING, "info_hash", info));
  const secret = labeledExtract(SUITE, shared, "secret", NOTHING);
  const key = labeledExpand(SUITE, secret, "key", context, 32);
  const nonce = labeledExpand(SUITE, secret, "base_nonce", context, 12);
  const exporter = labeledExpand(SUITE, secret, "exp", context, 32);
  return {
    enc,
    seal: (about, plain) => chacha20poly1305(key, nonce, about).encrypt(plain), // once: the nonce is that of the first message
    exported: (use, length) => labeledExpand(SUITE, exporter, "sec", use, length),
  };
}

function base64(some) {
  return btoa(String.fromCharCode(...some)).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

function unbase64(text) {
  return Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), (each) => each.charCodeAt(0));
}

// Fields as lines, always of one length.
function padded(fields) {
  const text = bytes(Object.entries(fields).map(([name, value]) => `${name}=${value}\n`).join(""));
  if (text.length > LENGTH - 2) throw new Error("too long");
  return join(two(text.length), text, new Uint8Array(LENGTH - 2 - text.length));
}

// A form, closed for this service, this link, this address and this key of the form: anywhere else it cannot be opened.
function close(where, fields) {
  const context = setup(unbase64(where.to), bytes("tiewright letter 1"));
  const closed = base64(join(context.enc, context.seal(bytes(`${where.action}\n${where.key}\n${where.bound}`), padded(fields))));
  return { action: where.action, body: new URLSearchParams({ key: where.key, seen: where.seen, closed }).toString(), read };

  // The service's answer, which this page alone can open.
  function read(answer) {
    const [seed, rest] = [answer.subarray(0, SEED), answer.subarray(SEED)];
    const plain = chacha20poly1305(context.exported(join(bytes("key"), seed), 32), context.exported(join(bytes("nonce"), seed), 12))
      .decrypt(rest);
    const length = new DataView(plain.buffer, plain.byteOffset).getUint32(0);
    return new TextDecoder().decode(plain.subarray(4, 4 + length));
  }
}

// To close for the sheet of this page, sent by its own form or by another one of the page.
export function letter(fields, by = document.getElementById("sheet-form")) {
  const { to, bound } = document.getElementById("sheet-form").dataset;
  return close({ to, bound, action: by.getAttribute("action"), key: by.elements.key.value, seen: by.elements.seen.value }, fields);
}

// What came of it: done, or the page that the service answers with. Throws when the service could not be reached.
export async function deliver({ action, body, read }) {
  const answer = await fetch(action, {
    method: "POST", body, credentials: "same-origin", redirect: "manual",
    headers: { "Content-Type": "application/x-www-form-urlencoded" },
  });
  if (answer.type === "opaqueredirect") return { done: true };
  const kind = answer.headers.get("Content-Type") ?? "";
  const text = kind.startsWith("application/octet-stream") ? read(new Uint8Array(await answer.arrayBuffer())) : await answer.text();
  return { done: false, ok: answer.ok, page: new DOMParser().parseFromString(text, "text/html") };
}

// Not done: the reasons stand on top, and the form is good for another try. Nothing chosen is lost.
export function refused(page, form = document.getElementById("sheet-form")) {
  const fresh = page.getElementById("sheet-form");
  for (const name of ["key", "seen"]) if (fresh) form.elements[name].value = fresh.elements[name].value;
  const { to, bound } = fresh?.dataset ?? {};
  if (to) Object.assign(document.getElementById("sheet-form").dataset, { to, bound });
  const slot = document.getElementById("page-refusal");
  const reasons = page.getElementById("refusal") ?? page.querySelector("main") ?? page.body;
  slot.replaceChildren(...[...(reasons.id === "refusal" ? [reasons] : reasons.children)].map((each) => document.importNode(each, true)));
  slot.scrollIntoView({ block: "center" });
  slot.firstElementChild?.focus?.();
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

export const receiptOf = (form, names, secret) => digits(sha256(bytes(canonical(form, names, secret))));
export const freshSecret = () => digits(crypto.getRandomValues(new Uint8Array(32)));

// What this page shows as receipts.
export const receipts = () => [...document.querySelectorAll(".receipt .code")].map((each) => each.textContent.replace(/\s/g, ""));

// Half of the SHA-256 of the key, in fours: what stands on slips, on /trust and in the terminal.
export const fingerprint = (key) => digits(sha256(unbase64(key)).subarray(0, 16)).match(/.{4}/g).join(" ");
