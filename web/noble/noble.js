// What the pages of a sheet take of the noble libraries, as one file: see package.json.
export { x25519 } from "@noble/curves/ed25519.js";
export { chacha20poly1305 } from "@noble/ciphers/chacha.js";
export { expand, extract } from "@noble/hashes/hkdf.js";
export { sha256 } from "@noble/hashes/sha2.js";
