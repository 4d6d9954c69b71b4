// The marks of stages, the same shapes as on paper, in the colours of the dark page. The word
// always stands beside a mark; its colour only repeats what the shape says.

import { svg } from "#js/lib/dom.js"

/**
 * @param {string} mark
 * @param {number} x centre
 * @param {number} y centre
 * @param {number} r half its size
 * @returns {SVGElement}
 */
export function markAt(mark, x, y, r) {
  const group = svg("g", { class: `tally-mark tally-mark-${mark}` })
  group.append(...SHAPES[mark in SHAPES ? mark : "other"](x, y, r))
  return group
}

/** A mark as a picture of its own beside a word. */
export function markPicture(/** @type {string} */ mark, size = 28) {
  const picture = svg("svg", {
    width: size,
    height: size,
    viewBox: "-14 -14 28 28",
    "aria-hidden": "true",
    focusable: "false",
  })
  picture.append(markAt(mark, 0, 0, 10))
  return picture
}

/** @type {Record<string, (x: number, y: number, r: number) => SVGElement[]>} */
const SHAPES = {
  egg: (x, y, r) => [svg("ellipse", { cx: x, cy: y, rx: 0.7 * r, ry: r, class: "tally-hollow" })],
  larva1: (x, y, r) => [
    svg("circle", { cx: x, cy: y, r: 0.9 * r, class: "tally-hollow" }),
    svg("circle", { cx: x, cy: y, r: 0.35 * r }),
  ],
  larva: (x, y, r) => [svg("circle", { cx: x, cy: y, r })],
  pupal: (x, y, r) => [
    svg("rect", { x: x - 0.9 * r, y: y - 0.9 * r, width: 1.8 * r, height: 1.8 * r }),
  ],
  adult: (x, y, r) => [svg("path", { d: triangle(x, y, r) })],
  male: (x, y, r) => [svg("path", { d: triangle(x, y, r), class: "tally-hollow" })],
  enemy: (x, y, r) => [
    svg("path", { d: `M${x} ${y - r}L${x + r} ${y}L${x} ${y + r}L${x - r} ${y}Z` }),
  ],
  other: (x, y, r) => [svg("path", { d: cross(x, y, 0.7 * r), class: "tally-stroke" })],
  unsure: (x, y, r) => [
    svg("text", { x, y: y + 0.75 * r, "font-size": 2.2 * r, "text-anchor": "middle" }, "?"),
  ],
}

const triangle = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ r) =>
  `M${x} ${y - r}L${x + r} ${y + 0.8 * r}L${x - r} ${y + 0.8 * r}Z`

const cross = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ r) =>
  `M${x - r} ${y - r}L${x + r} ${y + r}M${x - r} ${y + r}L${x + r} ${y - r}`
