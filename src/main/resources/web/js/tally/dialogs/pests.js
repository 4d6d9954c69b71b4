// Which pests are looked for on the filter that is open.

import { el } from "#js/lib/dom.js"

/** These have keys of their own on every keypad. */
const ALWAYS = ["predatory-mites", "other", "unsure"]

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 */
export function pestsPart(app, counting) {
  const { code } = counting.filter
  const looked = counting.profiles.map(({ pest }) => pest)
  // A zero means that it was looked for: what was not looked for in the first cells has none there.
  const begun = [...counting.state().filter.cells.values()].some((cell) => cell.read)
  const boxes = Object.keys(app.sheet().stages)
    .filter((pest) => !ALWAYS.includes(pest))
    .map((pest) => ({ pest, box: box(pest) }))
  const said = el("p", { class: "tally-note", role: "status" })
  const hint = app.say(begun ? "tally.pests.begun" : "tally.pests.hint")
  return el(
    "section",
    {},
    el("h3", {}, app.say("tally.pests")),
    el("p", { class: "tally-note" }, hint),
    el(
      "div",
      { class: "tally-row" },
      ...boxes.map(({ pest, box }) =>
        el("label", { class: "tally-choice" }, box, app.sheet().pestNames[pest]),
      ),
    ),
    said,
  )

  function box(/** @type {string} */ pest) {
    const checked = looked.includes(pest)
    return /** @type {HTMLInputElement} */ (
      el("input", { type: "checkbox", checked, disabled: begun, onchange: chosen })
    )
  }

  async function chosen(/** @type {Event} */ event) {
    const ticked = boxes.filter(({ box }) => box.checked).map(({ pest }) => pest)
    if (ticked.length === 0) {
      said.textContent = app.say("tally.pests.one")
      const last = /** @type {HTMLInputElement} */ (event.target)
      last.checked = true
      return
    }
    said.textContent = ""
    // What was looked for already keeps its place in the order of the keys.
    const kept = looked.filter((pest) => ticked.includes(pest))
    const pests = [...new Set([...kept, ...ticked])]
    await app.choose({ pests: { ...app.session().pests, [code]: pests } })
    await app.again(true)
  }
}
