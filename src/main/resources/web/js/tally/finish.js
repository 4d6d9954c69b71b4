// The end of a filter: when it may end, what is recorded, and what is said.

import { refused } from "#js/tally/presses.js"
import { finished, timeAt } from "#js/tally/reading.js"

const AGAIN_WITHIN = 10_000
/** Natural enemies have a key of their own on every keypad: they are always looked for. */
const ALWAYS = "predatory-mites"

/**
 * @param {import("#js/tally/counting.js").Counting} counting
 * @param {{ cellsInAll: number }} layout
 */
export function createEnding(counting, { cellsInAll }) {
  let askedAt = -Infinity

  return {
    /**
     * May the filter end as it stands?
     *
     * @returns {{ end: boolean, words?: [string, ...any[]] }}
     */
    asked() {
      const state = counting.state()
      if (state.filter.done) return { end: false }
      if (state.allRead) return { end: true }
      if (state.passesDone === 0)
        return { end: false, words: ["tally.refused.cells-left", state.left] }
      if (state.betweenPasses) return { end: true }
      const again = counting.now() - askedAt < AGAIN_WITHIN
      askedAt = counting.now()
      return again ? { end: true } : { end: false, words: ["tally.said.broken-pass"] }
    },
    deeds() {
      const { profiles } = counting
      const facts = {
        reader: counting.person,
        cells_readable: String(cellsInAll),
        passes: String(counting.passes),
        pass_start: String(counting.passes > 1 ? counting.filter.walkStart % counting.passes : 0),
        minutes: minutes(counting),
      }
      return finished([...profiles.map(({ pest }) => pest), ALWAYS], facts)
    },
    refusal: (/** @type {[string, ...any[]]} */ words) => refused(...words).heard,
  }
}

/** Whole tenths of a minute; never 0, since a reading took some time. */
function minutes(/** @type {import("#js/tally/counting.js").Counting} */ counting) {
  return String(Math.max(0.1, Math.round(timeAt(counting.own()) / 6000) / 10))
}
