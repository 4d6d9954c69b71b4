// Which key was meant, and which presses are none. Physical keys, never characters: with NumLock
// off a keypad's 4 says "arrow left" but is still the key Numpad4. Nothing here knows the page.

import { KEYPAD, LETTERS } from "#js/tally/key-codes.js"

/** A switch that bounces closes again within this time, in milliseconds. */
const BOUNCE = 60
/** … or chatters when it is let go. */
const CHATTER = 25
/** Two keys within this time were pressed by one clumsy finger. */
const TWO_AT_ONCE = 40
/** Held for so long a key means something else. */
export const HOLD = 800

/** Keys that mean one thing when let go early and another when held. */
const HELD = new Set(["/", "*", "Enter"])

/**
 * @typedef {{ code: string, at: number, repeat: boolean }} Stroke at: milliseconds, by any clock
 * @typedef {{ kind: "press" | "hold" | "early", key: string }
 *   | { kind: "refused", why: "repeat" | "bounce" | "two-at-once" | "hidden", key: string }
 *   | { kind: "waiting", key: string, until: number }
 *   | { kind: "passed" }
 *   | { kind: "nothing" }} Meaning early: a key that must be held was let go too soon
 */

/** @param {{ pedal?: string, letters?: boolean }} [learned] code of the pedal; letters in use */
export function createKeys({ pedal = "", letters = true } = {}) {
  const byCode = { ...(letters ? LETTERS : {}), ...KEYPAD, ...(pedal ? { [pedal]: "0" } : {}) }
  /** @type {Map<string, { down: number, up: number }>} */
  const times = new Map()
  /** @type {{ code: string, at: number } | undefined} */
  let latest
  /** @type {{ code: string, key: string, at: number } | undefined} */
  let held
  /** @type {string | undefined} code whose repeats were already buzzed at */
  let repeating

  return { down, up, due, letGo }

  /**
   * @param {Stroke} stroke
   * @returns {Meaning}
   */
  function down({ code, at, repeat }) {
    if (code === "") return { kind: "refused", why: "hidden", key: "" }
    const key = byCode[code]
    if (key === undefined) return { kind: "passed" }
    if (repeat) return again(code, key)
    const before = times.get(code) ?? { down: -Infinity, up: -Infinity }
    const bounced = at - before.down < BOUNCE || at - before.up < CHATTER
    times.set(code, { down: bounced ? before.down : at, up: before.up })
    if (bounced) return { kind: "refused", why: "bounce", key }
    if (latest && latest.code !== code && at - latest.at < TWO_AT_ONCE) {
      return { kind: "refused", why: "two-at-once", key }
    }
    latest = { code, at }
    if (!HELD.has(key)) return { kind: "press", key }
    held = { code, key, at }
    return { kind: "waiting", key, until: at + HOLD }
  }

  /**
   * A held key repeats by itself: refused with one buzz, not thirty in a second. While a key is
   * held on purpose its repeats mean nothing.
   *
   * @returns {Meaning}
   */
  function again(/** @type {string} */ code, /** @type {string} */ key) {
    if (held?.code === code || repeating === code) return { kind: "nothing" }
    repeating = code
    return { kind: "refused", why: "repeat", key }
  }

  /**
   * @param {{ code: string, at: number }} stroke
   * @returns {Meaning}
   */
  function up({ code, at }) {
    const before = times.get(code)
    if (before) times.set(code, { ...before, up: at })
    if (repeating === code) repeating = undefined
    if (held?.code !== code) return { kind: "nothing" }
    const { key } = held
    const long = at - held.at >= HOLD
    held = undefined
    if (long) return { kind: "hold", key }
    return key === "Enter" ? { kind: "early", key } : { kind: "press", key }
  }

  /**
   * Has a key been held for long enough by now?
   *
   * @param {number} now
   * @returns {Meaning}
   */
  function due(now) {
    if (!held || now - held.at < HOLD) return { kind: "nothing" }
    const { key } = held
    held = undefined
    return { kind: "hold", key }
  }

  /** The window lost the keyboard: a key that is let go elsewhere is not held for ever. */
  function letGo() {
    held = undefined
    repeating = undefined
  }
}
