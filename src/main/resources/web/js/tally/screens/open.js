// Which filter lies under the microscope: the code on its lid, then the code on its base.

import { el } from "#js/lib/dom.js"
import { checkedPair, waitingUnder } from "#js/tally/opening.js"
import { dueRows } from "#js/tally/view/due-rows.js"
import { choice, codeField } from "#js/tally/view/fields.js"
import { canScan, scan } from "#js/walk/scan.js"

/**
 * @param {any} app
 * @returns {{ nodes: (HTMLElement | null)[], leave: () => void, renewed: () => void,
 *   foot: () => void }}
 */
export function openScreen(app) {
  /** @type {() => void} */
  let stopCamera = () => {}
  let warned = ""
  const lid = codeField("lid", app.say("tally.open.lid"))
  const base = codeField("base", app.say("tally.open.base"))
  const fault = el("p", { class: "tally-fault", id: "fault", role: "alert" })
  const person = choice("person", app.say("tally.open.reader"), people(app), app.session().person)
  const passes = choice("passes", app.say("tally.open.how"), ways(app), usualWay(app))
  const wash = choice("wash", app.say("tally.open.wash"), washes(app), "1")
  const camera = el("div", { class: "tally-camera" })
  const form = el(
    "form",
    { class: "tally-open", novalidate: true },
    lid.label,
    base.label,
    fault,
    camera,
    el("div", { class: "tally-open-more" }, person.label, passes.label, wash.label),
    el("button", { class: "tally-go", type: "submit" }, app.say("tally.open.start")),
  )
  form.addEventListener("submit", (event) => {
    event.preventDefault()
    app.voice.wake()
    take()
  })
  const list = el("section")
  const foot = el("p", { class: "tally-foot" })
  renewed()
  offerCamera()
  queueMicrotask(() => lid.field.focus())
  return {
    nodes: [
      el("h1", { tabindex: -1 }, app.say("tally.open.title")),
      el("p", {}, app.say("tally.open.hint")),
      form,
      list,
      foot,
    ],
    leave: () => stopCamera(),
    renewed,
    foot: showFoot,
  }

  /** What waits may have changed while the page was open. */
  function renewed() {
    list.replaceChildren(...dueRows(app, chosen))
    showFoot()
  }

  function showFoot() {
    return app.foot(foot)
  }

  function chosen(/** @type {string} */ code) {
    lid.field.value = code
    base.field.focus()
    tell("tally.open.now-base")
  }

  /** A scanner types a code and presses Enter: the lid leads to the base, the base opens. */
  async function take() {
    const pair = checkedPair(app.sheet(), lid.field.value, base.field.value, whichWash())
    if (pair.fault) {
      tell("tally.open.fault." + pair.fault, lid.field.value.trim(), base.field.value.trim())
      ;(pair.at === "lid" ? lid : base).field.select()
      return
    }
    if (!pair.code) {
      base.field.focus()
      return tell("tally.open.now-base")
    }
    const reader = person.field.value
    if (!reader) return tell("tally.open.fault.person")
    if (isOwnFirst(pair.code, reader)) return tell("tally.open.fault.own", pair.code)
    await app.open(pair.code, { person: reader, passes: passes.field.value, wash: whichWash() })
  }

  function whichWash() {
    return Number(wash.field.value)
  }

  /** A filter is counted again by somebody else; where nobody else is there, after a word. */
  function isOwnFirst(/** @type {string} */ code, /** @type {string} */ reader) {
    const first = whichWash() === 1 && waitingUnder(app.sheet(), code)?.notBy === reader
    const again = warned === code
    warned = code
    return first && !again
  }

  function tell(/** @type {string} */ key, /** @type {any[]} */ ...values) {
    fault.textContent = app.say(key, ...values)
    app.voice.say(fault.textContent)
  }

  async function offerCamera() {
    if (!(await canScan())) return
    const start = el("button", { type: "button", class: "tally-plain" }, app.say("tally.open.scan"))
    start.addEventListener("click", async () => {
      stopCamera = await scan(camera, app.say("tally.open.scan"), (text) => {
        const field = lid.field.value ? base.field : lid.field
        if (field === base.field && text === lid.field.value) return
        field.value = text
        take()
      })
    })
    camera.append(start)
  }
}

/** @returns {[string, string][]} */
const people = (/** @type {any} */ app) => [
  ["", app.say("tally.open.who")],
  ...app.sheet().people.map((/** @type {string} */ code) => [code, code]),
]

/** @returns {[string, string][]} */
const ways = (/** @type {any} */ app) => [
  ["", app.say("tally.open.whole")],
  [String(app.sheet().stop.passes), app.say("tally.open.passes", app.sheet().stop.passes)],
]

/** As it was read the last time. */
const usualWay = (/** @type {any} */ app) =>
  app.session().passes > 1 ? String(app.sheet().stop.passes) : ""

/** @returns {[string, string][]} */
const washes = (/** @type {any} */ app) =>
  ["1", "2", "3"].map((number) => [number, app.say("tally.open.wash." + number)])
