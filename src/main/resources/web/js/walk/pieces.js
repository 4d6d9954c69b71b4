// Pieces of a screen: one heading, one decision, big answers.

import { el } from "#js/lib/dom.js"

/** @typedef {import("#js/walk/app.js").App} App */

/**
 * @param {App} app
 * @param {string} left
 */
export function bar(app, left) {
  return el(
    "div",
    { class: "walk-bar" },
    el("span", {}, left),
    el(
      "button",
      { class: "walk-more", type: "button", onclick: () => app.show({ screen: "more" }) },
      app.say("walk.more"),
    ),
  )
}

/**
 * @param {string} text
 * @param {string} [big] a code or place to be read at arm's length
 */
export function heading(text, big = "") {
  return el(
    "h1",
    { tabindex: -1, class: big ? "walk-big" : "" },
    big ? el("span", {}, text + " ") : text,
    big || null,
  )
}

/** @param {(string | Node)[]} parts */
export const lead = (...parts) => el("p", { class: "walk-lead" }, ...parts)

/** @param {(string | Node)[]} parts */
export const text = (...parts) => el("p", {}, ...parts)

/**
 * @param {string} words
 * @param {() => unknown} press
 * @param {string} [kind] "main" for the one that is usually right, "plain" for the way around
 */
export function answer(words, press, kind = "") {
  const look = kind ? ` walk-${kind}` : ""
  return el("button", { class: "walk-answer" + look, type: "button", onclick: once(press) }, words)
}

/** @param {(Node | null)[]} all */
export const answers = (...all) => el("div", { class: "walk-answers" }, ...all)

/** @param {(Node | null)[]} all */
export const pairs = (...all) => el("div", { class: "walk-answers walk-pairs" }, ...all)

/**
 * A number to type, with its button.
 *
 * @param {App} app
 * @param {string} label
 * @param {{ least: number, most: number }} range
 * @param {(number: number) => unknown} done
 */
export function numberForm(app, label, { least, most }, done) {
  const field = el("input", {
    id: "number",
    inputmode: "numeric",
    autocomplete: "off",
    pattern: "[0-9]*",
    "aria-describedby": "fault",
  })
  const typed = () => /** @type {HTMLInputElement} */ (field).value.trim()
  return typedForm(app, label, field, () => {
    const number = Number(typed())
    if (!/^\d{1,6}$/.test(typed()) || number < least || number > most) {
      return app.say("walk.number.fault", least, most)
    }
    done(number)
    return ""
  })
}

/**
 * @param {App} app
 * @param {string} label
 * @param {HTMLElement} field
 * @param {() => string} send says what is wrong; empty where nothing is
 */
export function typedForm(app, label, field, send) {
  const fault = el("p", { class: "walk-fault", id: "fault", role: "alert" })
  const form = el(
    "form",
    { class: "walk-type", novalidate: true },
    el("label", { for: field.id }, label),
    field,
    fault,
    el("button", { class: "walk-answer walk-main", type: "submit" }, app.say("walk.use")),
  )
  form.addEventListener("submit", (event) => {
    event.preventDefault()
    fault.textContent = send()
    if (fault.textContent) field.focus()
  })
  return form
}

/** A wet glove presses twice: the second press finds nothing. */
function once(/** @type {() => unknown} */ press) {
  let pressed = false
  return async () => {
    if (pressed) return
    pressed = true
    await press()
    pressed = false
  }
}
