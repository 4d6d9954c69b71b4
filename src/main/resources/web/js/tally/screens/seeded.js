// After a known filter: what was found of what lay there, and where the rest is.

import { el } from "#js/lib/dom.js"
import { looked } from "#js/tally/shown.js"
import { compared } from "#js/tally/seeded.js"
import { filterPicture } from "#js/tally/view/filter-picture.js"

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 * @param {string} rest what else is to be said
 */
export function seededScreen(app, counting, rest) {
  const state = counting.state()
  const filter = /** @type {any} */ (counting.filter)
  const { found, known, missed, wrong, byStage } = compared(filter.placed, state.filter.cells)
  const places = (/** @type {any[]} */ all) => {
    const named = all.map((one) => app.say("tally.seeded.place", app.findName(one), one.cell))
    return [...new Set(named)].map((place) => times(place, named)).join("; ")
  }
  const next = el(
    "button",
    { type: "button", class: "tally-go", onclick: () => app.next(counting) },
    app.say("tally.seeded.next"),
  )
  const stages = Object.entries(byStage).map(([key, of]) => {
    const [pest, stage] = key.split(" ")
    const share = app.say("tally.seeded.of", of.found, of.known)
    return el(
      "tr",
      {},
      el("th", { scope: "row" }, app.findName({ pest, stage })),
      el("td", {}, share),
    )
  })
  const said = el("p", { class: "tally-said", role: "status" })
  app.shown = (/** @type {string} */ words) => (said.textContent = words)
  app.voice.say(app.say("tally.seeded.said", found, known) + rest)
  queueMicrotask(() => next.focus())
  const foot = el("p", { class: "tally-foot" })
  showFoot()
  return {
    nodes: [
      el(
        "header",
        { class: "tally-head" },
        el("h1", { tabindex: -1 }, app.say("tally.seeded.title")),
        el("span", {}, app.say("tally.seeded.known", filter.name, known)),
      ),
      el("div", { class: "tally-picture" }, picture(app, state, missed)),
      el("p", { class: "tally-score" }, app.say("tally.seeded.of", found, known)),
      el(
        "div",
        { class: "tally-beside" },
        el(
          "p",
          {},
          missed.length > 0
            ? app.say("tally.seeded.missed", places(missed))
            : app.say("tally.seeded.all"),
        ),
        el(
          "p",
          {},
          wrong.length > 0
            ? app.say("tally.seeded.wrong", places(wrong))
            : app.say("tally.seeded.none-wrong"),
        ),
        el("table", { class: "tally-table" }, el("tbody", {}, ...stages)),
      ),
      next,
      said,
      foot,
    ],
    leave: () => {},
    foot: showFoot,
  }

  function showFoot() {
    return app.foot(foot, counting.own().length)
  }
}

/** A place once, with how many of one kind lie there. */
function times(/** @type {string} */ place, /** @type {string[]} */ all) {
  const number = all.filter((one) => one === place).length
  return number > 1 ? `${number} × ${place}` : place
}

function picture(/** @type {any} */ app, /** @type {any} */ state, /** @type {any[]} */ missed) {
  const { cellsRead, cellsObscured } = looked(state)
  return filterPicture({
    rows: app.sheet().layout.rows,
    state: { ...state, current: "" },
    markOf: app.markOf,
    label: app.say("tally.picture", cellsRead, cellsObscured, state.left),
    missed: missed.map(({ cell, pest, stage }) => ({ cell, mark: app.markOf(pest, stage) })),
    missedWord: app.say("tally.seeded.missed-word"),
  })
}
