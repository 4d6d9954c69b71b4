// What is wanted now and then: the other keys, sound, the pedal, vouchers, diagnostics, the way
// out.

import { el } from "#js/lib/dom.js"
import { lesson, modesRow } from "#js/tally/dialogs/hearing.js"
import { diagnosticsPart } from "#js/tally/dialogs/diagnostics.js"
import { pestsPart } from "#js/tally/dialogs/pests.js"
import { pedalPart } from "#js/tally/dialogs/pedal.js"
import { vouchersPart } from "#js/tally/dialogs/vouchers.js"

/** Keys that have no tile of their own on a phone. */
const OTHERS = ["8", "9", "2", "/", "*", "+"]

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 */
export function openMenu(app, counting) {
  const dialog = /** @type {HTMLDialogElement} */ (
    el("dialog", { class: "tally-dialog", "aria-label": app.say("tally.more") })
  )
  const close = () => dialog.close()
  dialog.append(
    el(
      "div",
      { class: "tally-dialog-head" },
      el("h2", {}, app.say("tally.more")),
      closer(app, close),
    ),
    keysPart(app, counting, close),
    hearingPart(app, counting),
    pestsPart(app, counting),
    pedalPart(app),
    vouchersPart(app, counting),
    diagnosticsPart(app, counting),
    leavePart(app, counting, close),
  )
  dialog.addEventListener("close", () => dialog.remove())
  document.body.append(dialog)
  dialog.showModal()
}

const closer = (/** @type {any} */ app, /** @type {() => void} */ close) =>
  el("button", { type: "button", class: "tally-plain", onclick: close }, app.say("tally.close"))

/** @param {any} app @param {any} counting @param {() => void} close */
function keysPart(app, counting, close) {
  const { keys } = counting.profile()
  const words = { "/": "tally.key.before", "*": "tally.key.after", "+": "tally.key.voucher" }
  const buttons = OTHERS.filter((key) => words[key] || keys[key]).map((key) =>
    el(
      "button",
      {
        type: "button",
        class: "tally-plain",
        onclick: () => {
          close()
          counting.press(key)
        },
      },
      words[key] ? app.say(words[key]) : keys[key].name,
    ),
  )
  const goTo = el("select", { id: "go-to" }, el("option", { value: "" }, app.say("tally.go-to")))
  counting.walk
    .flat()
    .toSorted()
    .forEach((cell) => goTo.append(el("option", {}, cell)))
  goTo.addEventListener("change", () => {
    close()
    app.goTo(/** @type {HTMLSelectElement} */ (goTo).value)
  })
  const place = el("label", { for: "go-to" }, app.say("tally.go-to.label"), goTo)
  return part(app.say("tally.keys"), el("div", { class: "tally-row" }, ...buttons), place)
}

/** @param {any} app @param {any} counting */
function hearingPart(app, counting) {
  const noVoice = app.voice.canSpeak() ? null : el("p", {}, app.say("tally.no-voice"))
  return part(
    app.say("tally.hearing"),
    modesRow(app),
    noVoice,
    lesson(app, counting),
    tick(app, "visual", app.session().visual ?? false),
    tick(app, "letters", app.session().letters ?? true),
    el("p", { class: "tally-note" }, app.say("tally.letters.hint")),
  )
}

/** A setting that is on or off; keys are listened to anew. */
function tick(/** @type {any} */ app, /** @type {string} */ name, /** @type {boolean} */ checked) {
  const onchange = async (/** @type {Event} */ event) => {
    const { checked: is } = /** @type {HTMLInputElement} */ (event.target)
    await app.choose({ [name]: is })
    await app.again()
  }
  const box = el("input", { type: "checkbox", checked, onchange })
  return el("label", { class: "tally-choice" }, box, app.say("tally." + name))
}

/** @param {any} app @param {any} counting @param {() => void} close */
function leavePart(app, counting, close) {
  const button = (/** @type {string} */ key, /** @type {() => unknown} */ press) =>
    el(
      "button",
      { type: "button", class: "tally-plain", onclick: () => (close(), press()) },
      app.say(key),
    )
  return part(
    app.say("tally.leave"),
    el(
      "div",
      { class: "tally-row" },
      button("tally.finish", () => app.finish()),
      button("tally.aside", () => app.next(counting)),
    ),
    el("p", { class: "tally-note" }, app.say("tally.aside.hint")),
    el("a", { href: `/${app.sheet().nursery}/today` }, app.say("tally.to-today")),
  )
}

/** @param {string} title @param {(Node | null)[]} content */
export const part = (title, ...content) => el("section", {}, el("h3", {}, title), ...content)
