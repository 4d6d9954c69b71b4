// Nobody enters before the end of a re-entry interval. Unknown ends mean nobody enters.

/**
 * @typedef {{ house: string, benches: string[], until: string | null }} NoEntry benches: none
 *   means the whole house; until: null where the end is not known
 */

/**
 * @param {NoEntry[]} all
 * @param {{ house: string, bench: string }} place
 * @param {number} now milliseconds
 * @returns {NoEntry | null} what keeps people out of the place, the longest
 */
export function closed(all, place, now) {
  const here = all.filter(
    (one) =>
      one.house === place.house &&
      (one.benches.length === 0 || one.benches.includes(place.bench)) &&
      (one.until === null || Date.parse(one.until) > now),
  )
  const unknown = here.find((one) => one.until === null)
  if (unknown) return unknown
  return here.reduce(
    (/** @type {NoEntry | null} */ longest, one) =>
      longest && (longest.until ?? "") >= (one.until ?? "") ? longest : one,
    null,
  )
}
