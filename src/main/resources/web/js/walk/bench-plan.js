// Little drawings: the benches of a house with the one to go to, and the place on the bench.

import { svg } from "#js/lib/dom.js"

const WIDTH = 328
const IN_A_ROW = 6
const ROW = 72

/** @typedef {import("#js/walk/app.js").App} App */

/**
 * @param {App} app
 * @param {{ house: string, bench: string }} goal
 * @param {string} [here] bench of the last jar
 */
export function benchPlan(app, goal, here = "") {
  const benches = app.sheet().benches.filter((/** @type {any} */ one) => one.house === goal.house)
  const columns = Math.min(IN_A_ROW, Math.max(1, benches.length))
  const rows = Math.ceil(benches.length / columns)
  const width = (WIDTH - 16) / columns
  const last = here && here !== goal.bench ? here : ""
  return svg(
    "svg",
    { class: "walk-plan", viewBox: `0 0 ${WIDTH} ${rows * ROW + 16}`, role: "img" },
    svg("title", {}, app.say("walk.plan.title", goal.bench, goal.house)),
    svg("rect", {
      x: 2,
      y: 2,
      width: WIDTH - 4,
      height: rows * ROW + 12,
      class: "walk-plan-house",
    }),
    ...benches.flatMap((/** @type {any} */ bench, /** @type {number} */ i) => {
      const x = 8 + (i % columns) * width + 4
      const y = 8 + Math.floor(i / columns) * ROW + 6
      const kind = bench.code === goal.bench ? "goal" : bench.code === last ? "here" : "bench"
      const name = bench.code.replace(goal.house + "-", "")
      return [
        svg("rect", { x, y, width: width - 8, height: ROW - 12, class: "walk-plan-" + kind }),
        svg(
          "text",
          { x: x + (width - 8) / 2, y: y + (ROW - 12) / 2 + 7, class: "walk-plan-name-" + kind },
          name,
        ),
        kind === "here"
          ? svg("circle", {
              cx: x + (width - 8) / 2,
              cy: y + ROW - 22,
              r: 5,
              class: "walk-plan-dot",
            })
          : null,
      ].filter((node) => node !== null)
    }),
  )
}

/**
 * @param {App} app
 * @param {{ along: number, across: number }} spot shares of the bench's length and width
 */
export function spotPicture(app, { along, across }) {
  const [x, y] = [14 + along * 300, 14 + across * 56]
  return svg(
    "svg",
    { class: "walk-plan", viewBox: "0 0 328 112", role: "img" },
    svg("title", {}, app.say("walk.spot.title", Math.round(along * 100), Math.round(across * 100))),
    svg("rect", { x: 2, y: 2, width: 324, height: 80, class: "walk-plan-house" }),
    svg("path", { d: `M${x} 3V81M3 ${y}H325`, class: "walk-plan-cross" }),
    svg("circle", { cx: x, cy: y, r: 10, class: "walk-plan-dot" }),
    svg("text", { x: 2, y: 104, class: "walk-plan-words" }, app.say("walk.spot.near")),
    svg("text", { x: 326, y: 104, class: "walk-plan-words-end" }, app.say("walk.spot.far")),
  )
}
