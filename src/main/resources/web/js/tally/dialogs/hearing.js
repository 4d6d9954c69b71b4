// What is heard, and a lesson in it: every sound of this filter by its name.

import { el } from "#js/lib/dom.js"

const MODES = ["off", "tones", "speech"]

/** Sounds that are no insect, in the order in which they are met. */
const OTHER_SOUNDS = [
  "click",
  "fifth",
  "row",
  "obscured",
  "undo",
  "voucher",
  "pass",
  "done",
  "refused",
]

/** @param {any} app */
export function modesRow(app) {
  const modes = MODES.map((mode) =>
    el(
      "label",
      { class: "tally-choice" },
      el("input", {
        type: "radio",
        name: "mode",
        checked: app.voice.mode() === mode,
        onchange: async () => {
          app.voice.setMode(mode)
          app.voice.wake()
          await app.choose({ mode })
        },
      }),
      app.say("tally.mode." + mode),
    ),
  )
  return el("div", { class: "tally-row" }, ...modes)
}

/**
 * Each press plays one sound; nothing is counted.
 *
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 */
export function lesson(app, counting) {
  const { keys } = counting.profile()
  const stages = Object.keys(keys).map((key) => {
    const { mark, pest, name } = keys[key]
    const own = pest === counting.profile().pest
    const what = { kind: "count", mark, pest: own ? counting.profileIndex() : 0 }
    return soundButton(app, `${key} ${name}`, what)
  })
  const others = OTHER_SOUNDS.map((kind) =>
    soundButton(app, app.say("tally.sound." + kind), { kind }),
  )
  return el(
    "details",
    {},
    el("summary", {}, app.say("tally.lesson")),
    el("p", { class: "tally-note" }, app.say("tally.lesson.hint")),
    el("div", { class: "tally-row" }, ...stages, ...others),
  )
}

function soundButton(/** @type {any} */ app, /** @type {string} */ name, /** @type {any} */ what) {
  const onclick = () => {
    app.voice.wake()
    app.heard(what)
  }
  return el("button", { type: "button", class: "tally-plain", onclick }, name)
}
