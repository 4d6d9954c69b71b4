// The round filter with its grid: read, current, obscured and unread cells, finds, and the way on.

import { svg } from "#js/lib/dom.js"
import { placeOf } from "#js/tally/grid.js"
import { isLookedAt } from "#js/tally/fold.js"
import { CELL, RAIL, TOP, patterns, rails } from "#js/tally/view/filter-paper.js"
import { markAt } from "#js/tally/view/marks.js"

/**
 * @param {{ rows: number[], state: import("#js/tally/reading.js").State,
 *   markOf: (pest: string, stage: string) => string, label: string,
 *   missed?: { cell: string, mark: string }[], missedWord?: string }} shown
 * @returns {SVGElement}
 */
export function filterPicture({ rows, state, markOf, label, missed = [], missedWord = "" }) {
  const wide = Math.max(...rows)
  const width = RAIL + wide * CELL + 30
  const height = RAIL + rows.length * CELL + 30
  const picture = svg("svg", {
    viewBox: `0 ${-TOP} ${width} ${height + TOP}`,
    class: "tally-filter",
    role: "img",
    "aria-label": label,
  })
  const middle = { x: RAIL + (wide * CELL) / 2, y: RAIL + (rows.length * CELL) / 2 }
  const radius = 0.5 * Math.max(wide + 0.75, rows.length + 1.75) * CELL
  const paper = svg("circle", { cx: middle.x, cy: middle.y, r: radius, class: "tally-paper" })
  // Of each cell one group, so that a press changes the picture in one place.
  const each = (/** @type {(name: string) => SVGElement[]} */ shapes) =>
    state.walk.flat().map((name) => svg("g", {}, ...shapes(name)))
  picture.append(
    patterns(),
    paper,
    ...each((name) => cellShapes(name, state)),
    svg("g", {}, ...way(state)),
    svg("g", {}, ...rails(rows, wide, state.current)),
    ...each((name) => finds(name, state, markOf)),
  )
  for (const { cell, mark } of missed) picture.append(...missedCell(cell, mark, missedWord))
  if (state.current && missed.length === 0) picture.append(frame(state.current, "tally-current"))
  return picture
}

const corner = (/** @type {string} */ name) => {
  const { row, column } = placeOf(name)
  return { x: RAIL + column * CELL, y: RAIL + row * CELL }
}

const centre = (/** @type {string} */ name) => {
  const { x, y } = corner(name)
  return { x: x + CELL / 2, y: y + CELL / 2 }
}

function frame(/** @type {string} */ name, /** @type {string} */ look) {
  return svg("rect", { ...corner(name), width: CELL, height: CELL, class: look })
}

/** @param {string} name @param {import("#js/tally/reading.js").State} state */
function cellShapes(name, state) {
  const cell = state.filter.cells.get(name)
  const look = cell?.obscured ? "obscured" : cell?.read ? "done" : "unread"
  const shapes = [frame(name, `tally-cell tally-cell-${look}`)]
  if (look !== "unread") {
    const hatch = frame(name, "tally-hatched")
    hatch.setAttribute("fill", `url(#tally-${look})`)
    shapes.push(hatch)
  }
  return shapes
}

/** What was found in a cell, in a column; a read cell without a find shows 0. */
function finds(
  /** @type {string} */ name,
  /** @type {import("#js/tally/reading.js").State} */ state,
  /** @type {(pest: string, stage: string) => string} */ markOf,
) {
  const cell = state.filter.cells.get(name)
  if (!cell) return []
  const { x, y } = centre(name)
  const all = Object.entries(cell.counts).flatMap(([pest, stages]) =>
    Object.entries(stages)
      .filter(([, number]) => number > 0)
      .map(([stage, number]) => ({ mark: markOf(pest, stage), number })),
  )
  if (all.length === 0 && isLookedAt(cell) && !cell.obscured) {
    return [svg("text", { x, y: y + 8, class: "tally-zero" }, "0")]
  }
  const columns = all.length > 2 ? 2 : 1
  const lines = Math.ceil(all.length / columns)
  const step = Math.min(24, 54 / lines)
  const r = columns > 1 ? 6 : lines > 1 ? 8 : 12
  const apart = columns > 1 ? 7 : 12
  return all.flatMap(({ mark, number }, i) => {
    const middle = x + (columns > 1 ? ((i % 2) - 0.5) * 26 : 0)
    const at = y + (Math.floor(i / columns) - (lines - 1) / 2) * step
    const shapes = [markAt(mark, number > 1 ? middle - apart : middle, at, r)]
    if (number > 1) {
      const text = {
        x: middle + apart + 2,
        y: at + (columns > 1 ? 6 : 8),
        class: columns > 1 ? "tally-number tally-small" : "tally-number",
      }
      shapes.push(svg("text", text, String(number)))
    }
    return shapes
  })
}

/** @param {string} name @param {string} mark @param {string} word */
const missedCell = (name, mark, word) => [
  frame(name, "tally-missed"),
  markAt(mark, centre(name).x, centre(name).y - 8, 9),
  svg("text", { x: centre(name).x, y: centre(name).y + 24, class: "tally-missed-word" }, word),
]

/** The way through the cells that are left of this pass; rings where the next pass will go. */
function way(/** @type {import("#js/tally/reading.js").State} */ { walk, pass, then, current }) {
  const here = (walk[pass] ?? []).filter((name) => name === current || then.includes(name))
  if (walk.length > 1) {
    const cells = here.filter((name) => name !== current)
    return cells.map((name) => {
      const { x, y } = centre(name)
      return svg("circle", { cx: x, cy: y, r: 5, class: "tally-ring" })
    })
  }
  const [first, ...rest] = here.map(centre)
  if (rest.length === 0) return []
  // From the edge of the cell under the eyepieces on: its finds must be seen.
  const [across, down] = [rest[0].x - first.x, rest[0].y - first.y]
  const share = CELL / 2 / Math.max(Math.abs(across), Math.abs(down))
  const edge = { x: first.x + share * across, y: first.y + share * down }
  const points = [here[0] === current ? edge : first, ...rest]
  const d = "M" + points.map(({ x, y }) => `${x} ${y}`).join("L")
  return [svg("path", { d, class: "tally-way" })]
}
