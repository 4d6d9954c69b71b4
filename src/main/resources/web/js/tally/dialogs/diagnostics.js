// How long a press takes to be kept and heard, and what this device can do.

import { el } from "#js/lib/dom.js"

/** @type {[string, "toCommit" | "toHeard" | "inDevice"][]} */
const TIMES = [
  ["kept", "toCommit"],
  ["heard", "toHeard"],
  ["sound", "inDevice"],
]

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 */
export function diagnosticsPart(app, counting) {
  const rows = el("tbody", {})
  const table = el("table", { class: "tally-table", "data-diagnostics": "" }, rows)
  const add = (/** @type {string} */ key, /** @type {string} */ value) =>
    rows.append(
      el("tr", {}, el("th", { scope: "row" }, app.say("tally.check." + key)), el("td", {}, value)),
    )
  const yes = (/** @type {unknown} */ is) => app.say(is ? "tally.yes" : "tally.no")
  const timings = counting.timings()
  add("presses", String(timings.length))
  for (const [key, name] of TIMES) {
    const times = timings.map((timing) => timing[name])
    add(
      key,
      spread(
        app,
        times.filter((time) => !Number.isNaN(time)),
      ),
    )
  }
  add("offline", yes(globalThis.isSecureContext))
  add("voice", yes(app.voice.canSpeak()))
  add("awake", yes("wakeLock" in navigator))
  add("device", counting.device)
  navigator.storage?.estimate?.().then(({ usage = 0, quota = 0 }) => {
    add("space", app.say("tally.check.space.of", Math.ceil(usage / 1e6), Math.floor(quota / 1e6)))
  })
  return el("details", {}, el("summary", {}, app.say("tally.check")), table)
}

/** @param {any} app @param {number[]} times */
function spread(app, times) {
  if (times.length === 0) return app.say("tally.check.none")
  return app.say(
    "tally.check.times",
    Math.round(quantile(times, 0.5)),
    Math.round(quantile(times, 0.95)),
  )
}

/**
 * @param {number[]} values at least one
 * @param {number} share 0 to 1
 * @returns {number} the smallest value that so large a share does not exceed
 */
export function quantile(values, share) {
  const sorted = values.toSorted((one, other) => one - other)
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]
}
