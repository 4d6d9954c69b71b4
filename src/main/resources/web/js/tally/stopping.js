// Whether one may stop, from what was found in completed passes. The rules are in stop.js.

import { advice } from "#js/tally/stop.js"

/**
 * @param {any} sheet
 * @param {import("#js/tally/counting.js").Counting} counting
 * @param {import("#js/tally/reading.js").State} state
 * @returns {any} null where it is not the moment to ask
 */
export function adviceNow(sheet, counting, state) {
  if (!state.betweenPasses || state.filter.done) return null
  const { cells } = state.filter
  const passes = state.walk.filter((pass) =>
    pass.every((name) => cells.get(name)?.read || cells.get(name)?.obscured),
  )
  const read = passes.flat().filter((name) => !cells.get(name)?.obscured)
  const obscured = [...cells.values()].filter((cell) => cell.obscured).length
  const { stop = {} } = /** @type {any} */ (counting.filter)
  const { detection = false, groups = [], othersToRead = 0 } = stop
  const asked = groups.length > 0 ? groups : [focal(sheet, counting)]
  return advice({
    detection,
    othersToRead,
    passesDone: passes.length,
    cellsRead: read.length,
    cellsTotal: state.walk.flat().length - obscured,
    perGroup: asked.map(({ pest, group, stages }) => ({
      pest,
      group,
      counts: read.map((name) => sum(cells.get(name)?.counts[pest] ?? {}, stages)),
    })),
    limits: groups,
    wantedRelativeError: sheet.stop.wantedRelativeError ?? null,
    minutes: minutesOf(counting),
    minutesAllowed: sheet.stop.minutesAllowed ?? null,
  })
}

/** Without a line there is still the question how many may lie in the rest. */
function focal(/** @type {any} */ sheet, /** @type {any} */ counting) {
  const { pest } = counting.profiles[0]
  return { pest, group: "all", stages: Object.keys(sheet.stages[pest]) }
}

const sum = (/** @type {Record<string, number>} */ counts, /** @type {string[]} */ stages) =>
  stages.reduce((all, stage) => all + (counts[stage] ?? 0), 0)

const minutesOf = (/** @type {any} */ counting) => {
  const times = counting.own().map((/** @type {any} */ { at }) => Date.parse(at))
  return times.length > 0 ? (counting.now() - Math.min(...times)) / 60_000 : 0
}
