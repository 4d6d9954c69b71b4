// Where the reader is on the filter, and what a key means there. Pure: events in, deeds out.

import { completed, foldFilter, isLookedAt } from "#js/tally/fold.js"

/** @typedef {ReturnType<typeof stateOf>} State */

/**
 * @param {any[]} events of this filter, from every device that is known of
 * @param {string[][]} walk
 * @param {string} [wanted] a cell the reader went to; else the next one of the walk
 */
export function stateOf(events, walk, wanted = "") {
  const filter = foldFilter(events, walk)
  const order = walk.flat()
  const open = order.filter((name) => !isLookedAt(filter.cells.get(name)))
  const passesDone = completed(walk, filter.cells).length
  const current = wanted || (open[0] ?? "")
  const pass = walk.findIndex((cells) => cells.includes(current))
  const begun = pass >= 0 && walk[pass].some((name) => isLookedAt(filter.cells.get(name)))
  return {
    filter,
    walk,
    current,
    wanted,
    /** what comes after the current cell */
    then: open.filter((name) => name !== current),
    pass,
    passesDone,
    allRead: open.length === 0,
    /** a pass is over and the next one not begun: here one may stop */
    betweenPasses: passesDone > 0 && open.length > 0 && !begun && !wanted,
    left: open.length,
  }
}

/**
 * @param {State} state
 * @param {string} device
 * @returns {{ slips: any[], taken: any, cell: string } | undefined} the latest of the reader's own
 *   presses that stands, and what goes with it
 */
export function undoable({ filter }, device) {
  const KINDS = ["counted", "cell_done", "voucher_kept", "filter_done"]
  const own = filter.standing.filter((event) => event.device === device)
  const taken = own
    .filter(({ deed }) => KINDS.includes(deed.deed))
    .sort((one, other) => one.sequence - other.sequence)
    .at(-1)
  if (!taken) return undefined
  const ends = taken.deed.deed === "filter_done"
  const read = own.filter(({ deed }) => ends && deed.deed === "step" && deed.step === "read")
  return { slips: [taken, ...read], taken, cell: taken.deed.filter_cell ?? "" }
}

/** @param {any} event */
export const voided = ({ device, sequence }, reason = "undo") => ({
  deed: "voided",
  slip: { device, sequence },
  reason,
})

/**
 * @param {{ pest: string, stage: string }} meant
 * @param {string} cell
 */
export const counted = ({ pest, stage }, cell) => ({
  deed: "counted",
  pest,
  life_stage: stage,
  individuals: 1,
  filter_cell: cell,
})

/** @param {string} cell */
export const cellDone = (cell, obscured = false) => ({
  deed: "cell_done",
  filter_cell: cell,
  obscured,
})

/**
 * @param {State} state
 * @param {string} cell
 */
export function voucherKept({ filter }, cell) {
  const numbers = filter.vouchers.map(({ deed }) => deed.number)
  const last = filter.cells.get(cell)?.presses.at(-1)
  return {
    deed: "voucher_kept",
    filter_cell: cell,
    number: Math.max(0, ...numbers) + 1,
    ...(last ? { press: { device: last.device, sequence: last.sequence } } : {}),
  }
}

/**
 * The end of a filter: what was looked for, and how it was read.
 *
 * @param {string[]} pests
 * @param {Record<string, string>} facts
 */
export const finished = (pests, facts) => [
  { deed: "filter_done", pests: [...new Set([...pests, "other", "unsure"])].sort() },
  { deed: "step", step: "read", facts },
]

const LONGEST_PAUSE = 90_000

/**
 * @param {any[]} own events of the reader on this filter
 * @returns {number} milliseconds at the eyepieces: gaps longer than a pause are left out
 */
export function timeAt(own) {
  const times = own.map(({ at }) => Date.parse(at)).sort((one, other) => one - other)
  return times
    .slice(1)
    .map((time, i) => time - times[i])
    .filter((gap) => gap <= LONGEST_PAUSE)
    .reduce((sum, gap) => sum + gap, 0)
}

/** @param {import("#js/tally/fold.js").Counts} counts @param {string} pest */
export const totalOf = (counts, pest) =>
  Object.values(counts[pest] ?? {}).reduce((sum, number) => sum + number, 0)
