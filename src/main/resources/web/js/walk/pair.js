// Do lid and base belong together? The server asks the same in LidAndBase.java;
// testdata/walk/pairs.json holds both to it.

/**
 * @param {string} lid code on the lid
 * @param {string} base code on the base
 * @param {string[]} washed codes of the jars that were washed and wait for the freezer
 * @returns {"pair" | "no-pair" | "not-washed"}
 */
export function pairOf(lid, base, washed) {
  if (lid !== base) return "no-pair"
  return washed.includes(base) ? "pair" : "not-washed"
}
