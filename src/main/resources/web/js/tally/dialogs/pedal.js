// A pedal is a keyboard with one key. It means one thing: cell done.

import { el } from "#js/lib/dom.js"
import { isFree } from "#js/tally/key-codes.js"

/** @param {any} app */
export function pedalPart(app) {
  const said = el("p", { role: "status" })
  const tell = (/** @type {string} */ key) => {
    said.textContent = app.say("tally.pedal." + key, app.session().pedal)
  }
  const learn = el(
    "button",
    {
      type: "button",
      class: "tally-plain",
      onclick: () => {
        tell("press")
        addEventListener("keydown", heard, { capture: true, once: true })
      },
    },
    app.say("tally.pedal.learn"),
  )
  tell(app.session().pedal ? "known" : "none")
  return el("section", {}, el("h3", {}, app.say("tally.pedal")), said, learn)

  async function heard(/** @type {KeyboardEvent} */ event) {
    event.preventDefault()
    event.stopPropagation()
    if (event.code === "Escape") return tell("none")
    if (!isFree(event.code)) return tell("taken")
    await app.choose({ pedal: event.code })
    await app.again()
    tell("known")
  }
}
