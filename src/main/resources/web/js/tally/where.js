// Where the reader is and what is counted: said when a filter opens and ends, and when asked for.

import { sentence } from "#js/tally/sentence.js"
import { spelled } from "#js/tally/presses.js"
import { adviceWords } from "#js/tally/shown.js"
import { placeWords } from "#js/tally/view/head.js"

/** @typedef {import("#js/tally/counting.js").Counting} Counting */

export const openedWords = (/** @type {any} */ app, /** @type {Counting} */ counting) =>
  app.say("tally.said.opened", placeWords(app, counting.filter), spelled(counting.state().current))

export const doneWords = (/** @type {any} */ app, /** @type {Counting} */ counting) =>
  sentence(app, ["tally.said.done", counting])

/**
 * @param {any} app
 * @param {Counting} counting
 * @returns {string}
 */
export function whereWords(app, counting) {
  const state = counting.state()
  if (state.filter.done) return doneWords(app, counting)
  const advice = app.advice(counting, state)
  const { lead, rest } = adviceWords(app, state, advice, app.secondsPerCell())
  const found = sentence(app, ["tally.said.where.filter", counting])
  if (state.allRead) return `${found} ${lead} ${rest}`
  const here = app.say("tally.said.where", spelled(state.current), foundHere(app, state))
  const left = app.count("tally.said.where.left.", state.left)
  return [here, found, left, ...(state.betweenPasses ? [lead, rest] : [])].join(" ")
}

function foundHere(/** @type {any} */ app, /** @type {any} */ state) {
  const counts = state.filter.cells.get(state.current)?.counts ?? {}
  const all = Object.entries(counts).flatMap(([pest, stages]) =>
    Object.entries(stages)
      .filter(([, number]) => number > 0)
      .map(([stage, number]) => `${number} ${app.findName({ pest, stage })}`),
  )
  return all.length > 0 ? all.join("; ") : app.say("tally.said.where.nothing")
}
