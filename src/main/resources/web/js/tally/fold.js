// Folds the presses of one filter. Order and repeats make no difference. The server does the same
// in Tally.java; testdata/tally/*.json holds both to it.

import { keyOf, slipsOf } from "#js/walk/fold.js"

/** @typedef {import("#js/walk/fold.js").EventId} EventId */
/** @typedef {Record<string, Record<string, number>>} Counts by pest and life stage */
/**
 * @typedef {{ name: string, read: boolean, obscured: boolean, doers: EventId[],
 *   counts: Counts, presses: any[] }} Cell
 * @typedef {{ counts: Counts, aside: Counts, cells: Map<string, Cell>, cellsRead: number,
 *   cellsObscured: number, cellsReadTwice: number, done: boolean, vouchers: any[],
 *   photos: any[], standing: any[] }} Filter
 */

/**
 * @param {Iterable<any>} events of one filter, in any order, repeats allowed
 * @param {string[][]} [walk] its passes, where they are known
 * @param {Record<string, string[]>} [stagesOf] life stages of each pest: a filter that is done has
 *   zeros there
 * @returns {Filter}
 */
export function foldFilter(events, walk, stagesOf = {}) {
  const distinct = [...new Map([...events].map((event) => [keyOf(event), event])).values()]
  const slips = slipsOf(distinct)
  const standing = distinct.filter((event) => !slips.has(keyOf(event))).sort(byIdentity)
  const of = (/** @type {string} */ kind) => standing.filter(({ deed }) => deed.deed === kind)
  const cells = cellsOf(of("cell_done"), of("counted"))
  const done = of("filter_done")
  const usable = done.length > 0 && walk ? new Set(completed(walk, cells).flat()) : undefined
  /** @type {Filter} */
  const filter = {
    counts: {},
    aside: {},
    cells,
    cellsRead: 0,
    cellsObscured: 0,
    cellsReadTwice: 0,
    done: done.length > 0,
    vouchers: of("voucher_kept"),
    photos: of("photo_taken"),
    standing,
  }
  for (const event of of("counted")) {
    const cell = cells.get(event.deed.filter_cell)
    add(isAside(event, cell, usable) ? filter.aside : filter.counts, event.deed)
  }
  for (const cell of cells.values()) {
    filter.cellsReadTwice += firstDoers(cell).size > 1 ? 1 : 0
    if (usable && !usable.has(cell.name)) continue
    filter.cellsObscured += cell.obscured ? 1 : 0
    filter.cellsRead += cell.read && !cell.obscured ? 1 : 0
  }
  for (const pest of done.flatMap(({ deed }) => deed.pests)) {
    for (const stage of stagesOf[pest] ?? []) add(filter.counts, zero(pest, stage))
  }
  return filter
}

/**
 * @param {string[][]} walk
 * @param {Map<string, Cell>} cells
 * @returns {string[][]} passes of which every cell was looked at
 */
export const completed = (walk, cells) =>
  walk.filter((pass) => pass.every((name) => isLookedAt(cells.get(name))))

/** @param {Cell | undefined} cell */
export const isLookedAt = (cell) => cell !== undefined && (cell.read || cell.obscured)

/**
 * Kept, but in no estimate: what lies in a cell that cannot be read, what a second device counted
 * in a cell that another had read, and what lies in a pass that was broken off.
 *
 * @param {any} event
 * @param {Cell | undefined} cell
 * @param {Set<string> | undefined} usable cells of completed passes
 */
function isAside(event, cell, usable) {
  if (!cell) return false
  if (cell.obscured || (usable && !usable.has(cell.name))) return true
  const doers = firstDoers(cell)
  return doers.has(event.device) && doers.keys().next().value !== event.device
}

/** @param {Cell} cell */
const firstDoers = (cell) => new Map(cell.doers.map((id) => [id.device, id]))

/**
 * @param {any[]} dones in the order of their identities
 * @param {any[]} counted
 */
function cellsOf(dones, counted) {
  /** @type {Map<string, Cell>} */
  const cells = new Map()
  const cell = (/** @type {string} */ name) => {
    const fresh = { name, read: false, obscured: false, doers: [], counts: {}, presses: [] }
    if (!cells.has(name)) cells.set(name, fresh)
    return /** @type {Cell} */ (cells.get(name))
  }
  for (const event of dones) {
    const one = cell(event.deed.filter_cell)
    one[event.deed.obscured ? "obscured" : "read"] = true
    one.doers.push(event)
  }
  for (const event of counted.filter(({ deed }) => deed.filter_cell)) {
    const one = cell(event.deed.filter_cell)
    add(one.counts, event.deed)
    one.presses.push(event)
  }
  return cells
}

/**
 * @param {Counts} counts
 * @param {{ pest: string, life_stage: string, individuals: number }} deed
 */
function add(counts, { pest, life_stage: stage, individuals }) {
  counts[pest] ??= {}
  counts[pest][stage] = (counts[pest][stage] ?? 0) + individuals
}

const zero = (/** @type {string} */ pest, /** @type {string} */ stage) => ({
  pest,
  life_stage: stage,
  individuals: 0,
})

/**
 * @param {EventId} one
 * @param {EventId} other
 */
function byIdentity(one, other) {
  if (one.device !== other.device) return one.device < other.device ? -1 : 1
  return one.sequence - other.sequence
}
