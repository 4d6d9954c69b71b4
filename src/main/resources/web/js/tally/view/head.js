// The line above: which filter, who reads it, and until when.

import { el } from "#js/lib/dom.js"
import { momentOf } from "#js/lib/time.js"

/**
 * @param {any} app
 * @param {any} filter of the sheet
 * @returns {string} such as "P1-B3 ‘Rubia Tarn’"
 */
export function placeWords(app, filter) {
  if (filter.role === "crop" || filter.role === "recount" || filter.role === "repeat_wash") {
    return filter.variety ? app.say("tally.place", filter.bench, filter.variety) : filter.bench
  }
  // A seeded filter looks like any other until it is done.
  return app.say("tally.role." + (filter.role === "seeded" ? "filter" : filter.role))
}

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 */
export function headOf(app, { filter, person }) {
  const one = /** @type {any} */ (filter)
  const { zone, language } = app.sheet()
  const facts = [
    one.jar ? app.say("tally.jar", one.jar, one.jars) : "",
    one.role === "crop" ? app.say("tally.purpose." + one.purpose) : "",
    one.growingPoints ? app.say("tally.growing-points", one.growingPoints) : "",
    one.label ?? one.code,
  ]
  const readBy = one.readBy
    ? " · " + app.say("tally.read-by", momentOf(new Date(one.readBy), zone, language))
    : ""
  return el(
    "header",
    { class: "tally-head" },
    el("h1", { tabindex: -1 }, placeWords(app, one)),
    el("span", {}, facts.filter(Boolean).join(" · ")),
    el("span", { class: "tally-who" }, person + readBy),
  )
}
