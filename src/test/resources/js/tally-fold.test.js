import { foldFilter } from "#js/tally/fold.js"
import { walkOf } from "#js/tally/grid.js"
import { cases, same, test } from "#test/check.js"

const named = (counts) =>
  Object.fromEntries(
    Object.entries(counts).flatMap(([pest, stages]) =>
      Object.entries(stages).map(([stage, number]) => [pest + "/" + stage, number]),
    ),
  )

/** The rows of the few small filters of these files. */
const ROWS = { 4: [2, 2], 40: [4, 6, 6, 8, 6, 6, 4] }

for (const given of await cases("tally")) {
  const { name, why, events, stages, walk } = given
  const passes = walk && walkOf(ROWS[walk.cells], walk.passes, walk.start)

  const check = (filter) => {
    same(named(filter.counts), given.counts, why + ": counts")
    same(named(filter.aside), given.aside ?? {}, why + ": aside")
    same(filter.cellsRead, given.cells_read, why + ": cells read")
    same(filter.cellsObscured, given.cells_obscured, why + ": cells obscured")
    same(filter.cellsReadTwice, given.cells_read_twice ?? 0, why + ": cells read twice")
    same(filter.done, given.done, why + ": done")
  }

  test(`folds ${name}`, () => check(foldFilter(events, passes, stages)))
  test(`folds ${name} in any order and sent twice`, () =>
    check(foldFilter([...events, ...events].reverse(), passes, stages)))
}
