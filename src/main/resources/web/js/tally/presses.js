// What a key means on the filter as it stands: what is recorded, and what is heard after that.

import { cellDone, counted, undoable, voided, voucherKept } from "#js/tally/reading.js"

/** @typedef {import("#js/tally/counting.js").Heard} Heard */
/** @typedef {import("#js/tally/reading.js").State} State */
/**
 * @typedef {{ deeds: any[], heard: Heard, after?: (state: State) => Heard, wanted?: string }} Meant
 *   after: what is heard, from the state that the deeds made
 */

/** @type {Record<string, (counting: any) => Meant>} */
const MEANINGS = {
  0: (counting) => cell(counting, false),
  ".": (counting) => cell(counting, true),
  "-": undo,
  "+": voucher,
  "/": (counting) => pest(counting, -1),
  "*": (counting) => pest(counting, 1),
}

/**
 * @param {string} key
 * @param {any} counting
 * @returns {Meant}
 */
export function deedOf(key, counting) {
  const { filter, current } = counting.state()
  if (filter.done && key !== "-") return refused("tally.refused.done")
  if (!current && !"-+/*".includes(key)) return refused("tally.refused.all-read")
  return MEANINGS[key] ? MEANINGS[key](counting) : count(key, counting)
}

/** @returns {Meant} */
function count(/** @type {string} */ key, /** @type {any} */ counting) {
  const { current } = counting.state()
  const profile = counting.profile()
  const meant = profile.keys[key]
  if (!meant) return refused("tally.refused.no-stage", profile.name)
  const own = meant.pest === profile.pest
  return {
    deeds: [counted(meant, current)],
    heard: {
      kind: "count",
      mark: meant.mark,
      pest: own ? counting.profileIndex() : 0,
      stage: meant,
      cell: current,
    },
  }
}

/** @returns {Meant} */
function cell(/** @type {any} */ counting, /** @type {boolean} */ obscured) {
  const { current, filter } = counting.state()
  const before = counting.state()
  const presses = filter.cells.get(current)?.presses.length ?? 0
  return {
    deeds: [cellDone(current, obscured)],
    wanted: "",
    heard: { kind: "click" },
    after: (state) => ({
      ...next(before, state, { obscured, presses, mayStop: counting.mayStop(state) }),
      cell: current,
    }),
  }
}

/**
 * @param {State} before
 * @param {State} state
 * @param {{ obscured: boolean, presses: number, mayStop: boolean }} done
 * @returns {Heard}
 */
function next(before, state, { obscured, presses, mayStop }) {
  if (state.allRead) return { kind: "pass", words: ["tally.said.all-read"] }
  if (state.betweenPasses) {
    const key = mayStop ? "tally.said.may-stop" : "tally.said.pass"
    return { kind: "pass", words: [key, state.passesDone, spelled(state.current)] }
  }
  if (obscured && presses > 0) {
    return { kind: "obscured", words: ["tally.said.aside", presses, spelled(state.current)] }
  }
  // Neighbours in a row are found by the hand; anything else must be told.
  const sameRow = before.current[0] === state.current[0]
  const told = state.walk.length > 1 || !sameRow || before.wanted !== ""
  /** @type {Heard} */
  const heard = told
    ? { kind: "row", words: ["tally.said.cell", spelled(state.current)] }
    : { kind: "click" }
  if (obscured) return { ...heard, kind: "obscured" }
  const read = state.walk.flat().length - state.left
  return heard.kind === "click" && read % 5 === 0 ? { kind: "fifth" } : heard
}

/** @returns {Meant} */
function undo(/** @type {any} */ counting) {
  const state = counting.state()
  const found = undoable(state, counting.device)
  if (!found) return refused("tally.refused.nothing")
  const { deed } = found.taken
  const across = found.cell !== state.current || deed.deed !== "counted"
  return {
    deeds: found.slips.map((event) => voided(event)),
    wanted: found.cell,
    heard: {
      kind: across ? "undo-across" : "undo",
      words: ["tally.said.undone." + deed.deed, ...undone(deed)],
      cell: found.cell,
      ...(deed.deed === "counted" ? { stage: { pest: deed.pest, stage: deed.life_stage } } : {}),
    },
  }
}

function undone(/** @type {any} */ deed) {
  const at = spelled(deed.filter_cell ?? "")
  if (deed.deed === "counted") return [{ pest: deed.pest, stage: deed.life_stage }, at]
  return deed.deed === "voucher_kept" ? [deed.number, at] : [at]
}

/** @returns {Meant} */
function voucher(/** @type {any} */ counting) {
  const state = counting.state()
  // A find is flagged just after it was counted: that may have been the last press of its cell.
  const last = undoable(state, counting.device)?.taken
  const at = last?.deed.deed === "counted" ? last.deed.filter_cell : state.current
  const deed = voucherKept(state, at)
  if (!deed.press) return refused("tally.refused.no-find", spelled(at))
  return {
    deeds: [deed],
    heard: { kind: "voucher", words: ["tally.said.voucher", deed.number, spelled(at)], cell: at },
  }
}

/** @returns {Meant} */
function pest(/** @type {any} */ counting, /** @type {number} */ by) {
  counting.turn(by)
  return { deeds: [], heard: { kind: "pest", words: ["tally.said.pest", counting.profile().name] } }
}

/** @returns {Meant} */
export const refused = (/** @type {string} */ key, /** @type {any[]} */ ...values) => ({
  deeds: [],
  heard: { kind: "refused", words: [key, ...values] },
})

/** A letter and a number apart, as voices read them best. */
export const spelled = (/** @type {string} */ cell) => cell.slice(0, 1) + " " + cell.slice(1)
