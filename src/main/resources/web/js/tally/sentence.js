// A sentence from its key and values; values may be finds that still need their names.

import { totalOf } from "#js/tally/reading.js"

/**
 * @param {any} app
 * @param {[string, ...any[]]} words
 * @returns {string}
 */
export function sentence(app, [key, ...values]) {
  return app.say(key, ...values.map((value) => nameOf(app, value)))
}

function nameOf(/** @type {any} */ app, /** @type {any} */ value) {
  if (typeof value !== "object") return value
  if (value.stage) return app.findName(value)
  const { filter } = value.state()
  const found = value.profiles.map(
    (/** @type {any} */ { pest, name }) => `${totalOf(filter.counts, pest)} ${name}`,
  )
  return found.join(", ")
}
