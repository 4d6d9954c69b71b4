// The beginning of a filter: what is recorded before the first press, and the counting of it.

import { startCounting } from "#js/tally/counting.js"
import { profilesOf } from "#js/tally/profiles.js"
import { adviceNow } from "#js/tally/stopping.js"

/**
 * @param {any} sheet
 * @param {any} session which filter, by whom, in how many passes
 * @param {{ log: any, now: () => number, heard: (what: any) => number,
 *   changed: (what: any) => void }} ways
 */
export function countingOf(sheet, { filter, passes = 1, person, pests = {} }, ways) {
  const fresh = sheet.filters.find((/** @type {any} */ one) => one.code === filter.code)
  return startCounting({
    ...ways,
    // What other devices did since then comes with the newest sheet.
    filter: fresh ? { ...filter, events: fresh.events, stop: fresh.stop } : filter,
    rows: sheet.layout.rows,
    passes,
    person,
    mayStop: (counting, state) => (adviceNow(sheet, counting, state)?.reason ?? null) !== null,
    profiles: profilesOf(sheet, pests[filter.code] ?? filter.pests),
  })
}

/**
 * @param {import("#js/tally/counting.js").Counting} counting
 * @param {string} code as read from lid and base
 * @returns {any[]} nothing where the filter was opened before
 */
export function openingDeeds(counting, code) {
  const { register, events } = /** @type {any} */ (counting.filter)
  const known = [...counting.own(), ...events].map(({ deed }) => deed.step)
  const deeds = []
  if (register && !known.includes("registered")) {
    deeds.push({ deed: "step", step: "registered", facts: register })
  }
  if (!known.includes("freezer_out")) {
    deeds.push({ deed: "step", step: "freezer_out", facts: { lid: code, base: code } })
  }
  return deeds
}
