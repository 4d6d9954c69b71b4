// A code by typing, by the camera, or by a photo of it that the server reads.

import { el } from "#js/lib/dom.js"
import { readCode } from "#js/walk/label-code.js"
import { answer, answers, typedForm } from "#js/walk/pieces.js"
import { canScan, readPhoto, scan } from "#js/walk/scan.js"

/**
 * @param {import("#js/walk/app.js").App} app
 * @param {(ending: () => void) => void} leaving
 * @param {string} label
 * @param {(code: string) => string} use says what is wrong with this code here; empty: it is right
 */
export function codeEntry(app, leaving, label, use) {
  const known = app.jars().map((jar) => jar.code)
  const field = el("input", {
    id: "code",
    autocomplete: "off",
    autocapitalize: "characters",
    spellcheck: "false",
    "aria-describedby": "fault",
  })
  const take = (/** @type {string} */ text) => {
    const read = readCode(text, known)
    return "code" in read ? use(read.code) : app.say("walk.code." + read.fault)
  }
  const typed = () => /** @type {HTMLInputElement} */ (field).value
  const form = typedForm(app, label, field, () => take(typed()))
  const said = (/** @type {string} */ words) => {
    const fault = form.querySelector(".walk-fault")
    if (fault) fault.textContent = words
  }
  const other = el("div", { class: "walk-scan" }, photoButton(app, said, take))
  canScan().then((can) => {
    if (!can) return
    const start = answer(app.say("walk.scan"), async () => {
      const ending = await scan(other, app.say("walk.scan.hold"), (text) => said(take(text)))
      leaving(ending)
    })
    other.replaceChildren(answers(start))
  })
  return el("div", {}, form, other)
}

/**
 * @param {import("#js/walk/app.js").App} app
 * @param {(words: string) => void} said
 * @param {(text: string) => string} take
 */
function photoButton(app, said, take) {
  const file = el("input", { type: "file", accept: "image/*", capture: "environment", id: "photo" })
  file.addEventListener("change", async () => {
    const photo = /** @type {HTMLInputElement} */ (file).files?.[0]
    if (!photo) return
    said(app.say("walk.photo.reading"))
    const sheet = app.sheet()
    const { text, fault } = await readPhoto(photo, `/${sheet.nursery}/walk/photo`, sheet.token)
    said(text ? take(text) : app.say("walk.photo." + fault))
  })
  return el("label", { class: "walk-answer walk-plain walk-photo" }, app.say("walk.photo"), file)
}
