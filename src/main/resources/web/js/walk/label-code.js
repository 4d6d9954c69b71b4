// The code on a label, as typed or scanned. The server reads the same in LabelCode.java;
// testdata/walk/label-codes.json holds both to it.

const LENGTH = 7
const ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
const STANDARD = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*"

/** @typedef {{ code: string } | { fault: "length" | "symbol" | "check" }} Read */

/**
 * @param {string} text small letters, spaces and hyphens do not matter; I and L are 1, O is 0
 * @returns {Read}
 */
export function readLabel(text) {
  const symbols = text
    .replace(/[\s\p{Pd}]/gu, "")
    .toUpperCase()
    .replace(/[IL]/g, "1")
    .replace(/O/g, "0")
  if (symbols.length !== LENGTH) return { fault: "length" }
  if ([...symbols].some((symbol) => !ALPHABET.includes(symbol))) return { fault: "symbol" }
  if (checkOf(symbols.slice(0, -1)) !== symbols.at(-1)) return { fault: "check" }
  return { code: symbols.slice(0, 3) + "-" + symbols.slice(3) }
}

/**
 * @param {string} text
 * @param {string[]} known codes of this round, those of other makes too
 * @returns {Read}
 */
export function readCode(text, known) {
  const plain = text.trim().toUpperCase()
  const exact = known.find((code) => code.toUpperCase() === plain)
  return exact ? { code: exact } : readLabel(text)
}

/** MOD 37-2 of ISO/IEC 7064: (…((a1·2 + a2)·2 + a3)…)·2 + check leaves 1. */
function checkOf(/** @type {string} */ data) {
  let sum = 0
  for (const symbol of data) sum = ((sum + STANDARD.indexOf(symbol)) * 2) % 37
  return STANDARD[(38 - sum) % 37]
}
