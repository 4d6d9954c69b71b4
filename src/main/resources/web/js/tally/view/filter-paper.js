// What stands around the cells: letters and numbers on two rails, and the hatches.

import { svg } from "#js/lib/dom.js"
import { placeOf } from "#js/tally/grid.js"

/** Side of a cell and width of the rails, in the picture's own units. */
export const CELL = 66
export const RAIL = 54
/** … and what the round paper needs above its first row. */
export const TOP = 40

/**
 * Letters and numbers outside the paper; those of the current cell are bold.
 *
 * @param {number[]} rows
 * @param {number} wide
 * @param {string} current
 */
export function rails(rows, wide, current) {
  const at = current ? placeOf(current) : { row: -1, column: -1 }
  const look = (/** @type {boolean} */ here) => (here ? "tally-rail tally-rail-here" : "tally-rail")
  const letters = rows.map((_, row) =>
    svg(
      "text",
      { x: 12, y: RAIL + (row + 0.5) * CELL + 8, class: look(row === at.row) },
      String.fromCharCode(65 + row),
    ),
  )
  const numbers = Array.from({ length: wide }, (_, column) =>
    svg(
      "text",
      { x: RAIL + (column + 0.5) * CELL, y: -14, class: look(column === at.column) },
      String(column + 1),
    ),
  )
  return [...letters, ...numbers]
}

/** Hatches of cells that are done and of those that cannot be read. */
export function patterns() {
  const pattern = (/** @type {string} */ id, /** @type {string} */ d) =>
    svg(
      "pattern",
      { id, width: 12, height: 12, patternUnits: "userSpaceOnUse" },
      svg("path", { d, class: "tally-hatch" }),
    )
  return svg(
    "defs",
    {},
    pattern("tally-done", "M-3 3L3 -3M0 12L12 0M9 15L15 9"),
    pattern("tally-obscured", "M-3 3L3 -3M0 12L12 0M9 15L15 9M-3 9L3 15M0 0L12 12M9 -3L15 3"),
  )
}
