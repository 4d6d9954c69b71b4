// The shake as a clock of one minute: a heavy rim where it is to protocol, the hand as a band.

import { svg } from "#js/lib/dom.js"
import { arc, point, target } from "#js/walk/timer.js"

const RIM = 112
const BAND = 96

/**
 * @param {import("#js/walk/timer.js").ShakeLimits} limits
 * @param {number} seconds shaken so far
 * @param {string} number big in the middle
 * @param {string} words below it
 */
export function dial(limits, seconds, number, words) {
  const { shakeSecondsLeast: least, shakeSecondsMost: most } = limits
  const face = svg(
    "svg",
    { class: "walk-dial", viewBox: "-160 -130 320 260", role: "img" },
    svg("title", {}, `${number} ${words}`),
    svg("circle", { r: RIM, class: "walk-dial-face" }),
    ...[...Array(12).keys()].map((i) => tick(i * 5)),
    svg("path", { d: arc(least, most, RIM), class: "walk-dial-rim" }),
    ...[least, target(limits)].map(mark),
    svg("path", { class: "walk-dial-band", d: "" }),
    svg("text", { y: 26, class: "walk-dial-number" }, number),
    svg("text", { y: 58, class: "walk-dial-words" }, words),
  )
  turn(face, seconds, number, words)
  return face
}

/**
 * @param {Element} face
 * @param {number} seconds
 * @param {string} number
 * @param {string} words
 */
export function turn(face, seconds, number, words) {
  const d = seconds > 0 ? arc(0, seconds, BAND) : ""
  face.querySelector(".walk-dial-band")?.setAttribute("d", d)
  for (const [name, said] of [["number", number], ["words", words]]) {
    const place = face.querySelector(".walk-dial-" + name)
    if (place && place.textContent !== said) place.textContent = said
  }
  const title = face.querySelector("title")
  if (title) title.textContent = `${number} ${words}`
}

function tick(/** @type {number} */ seconds) {
  const [x1, y1] = point(seconds, RIM)
  const [x2, y2] = point(seconds, RIM - 8)
  return svg("path", { d: `M${x1} ${y1}L${x2} ${y2}`, class: "walk-dial-tick" })
}

function mark(/** @type {number} */ seconds) {
  const [x, y] = point(seconds, RIM + 20)
  return svg("text", { x, y: y + 6, class: "walk-dial-mark" }, String(seconds))
}
