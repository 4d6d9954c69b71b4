// Fields of the dark page, each with its label around it.

import { el } from "#js/lib/dom.js"

/** @param {string} name @param {string} words */
export function codeField(name, words) {
  const field = /** @type {HTMLInputElement} */ (
    el("input", {
      id: name,
      autocomplete: "off",
      autocapitalize: "characters",
      spellcheck: "false",
      "aria-describedby": "fault",
    })
  )
  return { field, label: el("label", { for: name }, words, field) }
}

/**
 * @param {string} name
 * @param {string} words
 * @param {[string, string][]} options value and text
 * @param {string} chosen
 */
export function choice(name, words, options, chosen) {
  const field = /** @type {HTMLSelectElement} */ (
    el(
      "select",
      { id: name },
      ...options.map(([value, text]) => el("option", { value, selected: value === chosen }, text)),
    )
  )
  return { field, label: el("label", { for: name }, words, field) }
}
