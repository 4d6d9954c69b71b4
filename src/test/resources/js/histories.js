// Folds filters as the page does, for a test that has many of them; no test of its own.

import { foldFilter } from "#js/tally/fold.js"
import { walkOf } from "#js/tally/grid.js"
import { foldJar } from "#js/walk/fold.js"

/** The walk stands in the facts of the filter's last step, as the page wrote them there. */
function walkIn(events, rows) {
  const { passes, pass_start: start } = foldJar(events).facts
  return passes === undefined ? undefined : walkOf(rows, Number(passes), Number(start))
}

const named = (counts) =>
  Object.entries(counts).flatMap(([pest, stages]) =>
    Object.entries(stages).map(([stage, number]) => `${pest}/${stage} ${number}`),
  )

globalThis.foldAll = (stages, filters) =>
  filters.map(({ events, rows }) => {
    const filter = foldFilter(events, walkIn(events, rows), stages)
    return [
      "in use: " + named(filter.counts).sort().join(", "),
      "aside: " + named(filter.aside).sort().join(", "),
      `cells: ${filter.cellsRead} read, ${filter.cellsObscured} obscured`,
      `read twice: ${filter.cellsReadTwice}`,
      `done: ${filter.done}`,
      "questions: " + foldJar(events).questions.sort().join(", "),
    ].join("\n")
  })
