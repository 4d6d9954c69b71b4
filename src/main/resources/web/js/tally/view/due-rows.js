// The filters that may be read, the most urgent first.

import { el } from "#js/lib/dom.js"
import { momentOf } from "#js/lib/time.js"
import { labelOf } from "#js/tally/opening.js"
import { placeWords } from "#js/tally/view/head.js"

/**
 * @param {any} app
 * @param {(label: string) => void} take
 * @returns {HTMLElement[]}
 */
export function dueRows(app, take) {
  const rows = app.due().map((/** @type {any} */ one) => dueRow(app, one, take))
  const words = rows.length > 0 ? "tally.due" : "tally.due.none"
  return [el("h2", {}, app.say(words)), el("ol", { class: "tally-list" }, ...rows)]
}

/** @param {any} app @param {any} filter @param {(label: string) => void} take */
function dueRow(app, filter, take) {
  const { zone, language } = app.sheet()
  const { when, at, role, notBy } = filter
  const label = labelOf(filter)
  const until = app.say("tally.due." + when, at ? momentOf(at, zone, language) : "")
  const again = role === "recount" ? app.say("tally.due.again", notBy ?? "") + "; " : ""
  return el(
    "li",
    {},
    el(
      "button",
      { type: "button", class: "tally-due", onclick: () => take(label) },
      el("b", {}, label),
      el("span", {}, placeWords(app, filter)),
      el("small", {}, again + until),
    ),
  )
}
