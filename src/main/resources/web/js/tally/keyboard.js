// Listens to the keyboard while a filter is counted, and hands on what was meant.

import { createKeys } from "#js/tally/keys.js"

/**
 * @typedef {{ press(key: string, down: number): unknown, hold(key: string): unknown,
 *   early(key: string): unknown,
 *   refused(why: string, key: string): unknown, away(is: boolean): unknown,
 *   idle(): unknown, resting(): boolean }} Ears resting: a dialog is open, keys mean nothing here
 */

const IDLE = 90_000

/**
 * @param {Ears} ears
 * @param {{ pedal?: string, letters?: boolean }} learned
 * @returns {() => void} ends it
 */
export function listen(ears, learned) {
  const keys = createKeys(learned)
  const ending = new AbortController()
  const { signal } = ending
  let holding = 0
  let idle = 0
  rest()
  addEventListener("keydown", down, { signal, capture: true })
  addEventListener("keyup", up, { signal, capture: true })
  addEventListener("blur", () => away(true), { signal })
  addEventListener("focus", () => away(false), { signal })
  return () => {
    ending.abort()
    clearTimeout(holding)
    clearTimeout(idle)
  }

  function down(/** @type {KeyboardEvent} */ event) {
    if (ears.resting() || event.ctrlKey || event.altKey || event.metaKey) return
    if (isForButton(event)) return
    const { code, timeStamp: at, repeat } = event
    const meaning = keys.down({ code, at, repeat })
    if (meaning.kind === "passed") return
    // Space scrolls, slash searches, Backspace goes back: none of that under the reader's hands.
    event.preventDefault()
    rest()
    if (meaning.kind === "press") ears.press(meaning.key, at)
    if (meaning.kind === "refused") ears.refused(meaning.why, meaning.key)
    if (meaning.kind === "waiting") {
      clearTimeout(holding)
      holding = setTimeout(() => told(keys.due(meaning.until), at), meaning.until - at)
    }
  }

  function up(/** @type {KeyboardEvent} */ event) {
    if (ears.resting()) return keys.letGo()
    told(keys.up({ code: event.code, at: event.timeStamp }), event.timeStamp)
  }

  function told(/** @type {any} */ meaning, /** @type {number} */ at) {
    if (meaning.kind === "nothing") return
    clearTimeout(holding)
    if (meaning.kind === "press") ears.press(meaning.key, at)
    if (meaning.kind === "hold") ears.hold(meaning.key)
    if (meaning.kind === "early") ears.early(meaning.key)
  }

  function away(/** @type {boolean} */ is) {
    keys.letGo()
    clearTimeout(holding)
    ears.away(is)
  }

  function rest() {
    clearTimeout(idle)
    idle = setTimeout(() => ears.idle(), IDLE)
  }
}

/**
 * Space and Enter press the button that has the focus, for those who work with the keyboard alone;
 * the keypad's own keys always count.
 *
 * @param {KeyboardEvent} event
 */
function isForButton({ code, target }) {
  const onButton = target instanceof Element && target.closest("button, a, summary, input, select")
  return onButton !== null && onButton !== false && (code === "Space" || code === "Enter")
}
