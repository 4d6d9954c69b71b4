// Sentences about the filter as it stands: what is beside the cell's name, the advice, the foot.

/** @typedef {import("#js/tally/reading.js").State} State */

/**
 * @param {any} app
 * @param {State} state
 * @returns {{ then: string, read: string }}
 */
export function besideCell(app, state) {
  const { cellsRead, cellsObscured } = looked(state)
  return {
    then:
      state.then.length > 0 && state.current
        ? app.say("tally.then", state.then.slice(0, 3).join(", "))
        : "",
    read: app.say("tally.cells", cellsRead, cellsObscured, state.left),
  }
}

/** Cells that were looked at so far, also in a filter that is done. */
export function looked(/** @type {State} */ { filter }) {
  const cells = [...filter.cells.values()]
  return {
    cellsRead: cells.filter((cell) => cell.read && !cell.obscured).length,
    cellsObscured: cells.filter((cell) => cell.obscured).length,
  }
}

/**
 * One line that starts with what to do.
 *
 * @param {any} app
 * @param {State} state
 * @param {any} advice of the stop rules, at the end of a pass; null elsewhere
 * @param {number} secondsPerCell of this reader
 * @returns {{ lead: string, rest: string, offered: boolean }} offered: the filter may end now
 */
export function adviceWords(app, state, advice, secondsPerCell) {
  const line = (/** @type {string} */ key, /** @type {boolean} */ offered, ...values) => ({
    lead: app.say(key, ...values),
    rest: app.say(key + ".rest", ...values),
    offered,
  })
  if (state.filter.done) return line("tally.advice.done", true)
  if (state.allRead) return line("tally.advice.all-read", true)
  const last = state.walk[Math.max(0, state.pass)].at(-1) ?? ""
  const toGo = (state.walk[Math.max(0, state.pass)] ?? []).filter(
    (name) => name === state.current || state.then.includes(name),
  ).length
  const time = minutesWords(app, toGo * secondsPerCell)
  if (!advice) {
    return line(
      state.walk.length > 1 ? "tally.advice.pass" : "tally.advice.on",
      false,
      last,
      toGo,
      time,
    )
  }
  if (advice.reason === null && advice.upTo !== undefined) {
    return line("tally.advice.none-found", false, advice.upTo, state.left)
  }
  const { lower, upper } = advice.range ?? { lower: 0, upper: 0 }
  if (advice.reason === null) return line("tally.advice.second", false, lower, upper)
  return line(
    "tally.advice." + advice.reason,
    true,
    lower,
    upper,
    app.say("tally.verdict." + (advice.verdict ?? "none")),
  )
}

/** @param {any} app @param {number} seconds */
export const minutesWords = (app, seconds) =>
  seconds < 90
    ? app.say("tally.under-two-minutes")
    : app.count("tally.minutes.", Math.round(seconds / 60))

/**
 * @param {any} app
 * @param {{ presses?: number, waiting: number, late: boolean, answer: any }} sent presses: of the
 *   filter that is open
 */
export function footWords(app, { presses, waiting, late, answer }) {
  const isOpen = presses !== undefined
  const here = isOpen ? app.count("tally.foot.here.", presses) : app.say("tally.foot.there")
  if (answer.kind === "refused") return app.say("tally.foot.refused", answer.sentence)
  if (app.isOld()) return app.say("tally.foot.old")
  if (waiting === 0 && !isOpen && answer.kind === "unreachable") return app.say("tally.foot.alone")
  if (waiting === 0) return here + " " + app.say("tally.foot.all-sent")
  const why = late ? "late" : answer.kind === "unreachable" ? "unreachable" : "sending"
  return here + " " + app.say("tally.foot." + why, waiting)
}
