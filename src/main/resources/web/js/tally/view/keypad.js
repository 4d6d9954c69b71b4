// The keypad as it is under the hand: every key with its mark, its word and its count.

import { el, renew } from "#js/lib/dom.js"
import { markPicture } from "#js/tally/view/marks.js"

/** Places of the keys in the page's grid. */
const PLACES = {
  "/": "before",
  "*": "after",
  "-": "undo",
  7: "k7",
  8: "k8",
  9: "k9",
  "+": "voucher",
  4: "k4",
  5: "k5",
  6: "k6",
  1: "k1",
  2: "k2",
  3: "k3",
  0: "k0",
  ".": "obscured",
  Enter: "enter",
}

const WATER = 60

/**
 * @param {(key: string, words?: any) => string} say
 * @param {(key: string, down: number) => unknown} press
 */
export function createKeypad(say, press) {
  /** @type {Map<string, HTMLElement>} */
  const tiles = new Map()
  for (const [key, place] of Object.entries(PLACES)) {
    const tile = el("button", {
      type: "button",
      class: `tally-key tally-${place}`,
      "data-key": key,
    })
    guard(tile, (down) => press(key, down))
    tiles.set(key, tile)
  }
  return { nodes: () => [...tiles.values()], show, flash }

  /**
   * @param {any} profile
   * @param {any} counts of the filter
   * @param {{ vouchers: number, obscured: number, offered: boolean, undo: string, enter: string,
   *   done: string }} state offered: the filter may end now
   */
  function show(profile, counts, state) {
    for (const key of "123456789") stage(key, profile.keys[key], counts)
    fill("0", el("b", {}, say("tally.key.done")), el("small", {}, state.done))
    fill(".", say("tally.key.obscured"), number(state.obscured))
    fill("-", el("b", {}, say("tally.key.undo")), el("small", {}, state.undo))
    fill("+", say("tally.key.voucher"), number(state.vouchers))
    fill("/", say("tally.key.before"))
    fill("*", say("tally.key.after"))
    fill("Enter", el("b", {}, "Enter"), el("small", {}, state.enter))
    tiles.get("Enter")?.classList.toggle("tally-offered", state.offered)
  }

  function stage(/** @type {string} */ key, /** @type {any} */ meant, /** @type {any} */ counts) {
    const tile = /** @type {HTMLButtonElement} */ (tiles.get(key))
    tile.classList.toggle("tally-absent", !meant)
    tile.setAttribute("aria-disabled", String(!meant))
    if (!meant) return fill(key, el("small", {}, say("tally.key.none")))
    const found = counts[meant.pest]?.[meant.stage] ?? 0
    fill(
      key,
      markPicture(meant.mark),
      el("span", { class: "tally-word" }, meant.name),
      number(found),
    )
  }

  function fill(/** @type {string} */ key, /** @type {(Node | string)[]} */ ...content) {
    const cap = el(
      "span",
      { class: "tally-cap", "aria-hidden": "true" },
      key === "Enter" ? "" : key,
    )
    renew(/** @type {HTMLElement} */ (tiles.get(key)), cap, ...content)
  }

  /** A pressed key stays lit for a moment, steady. */
  function flash(/** @type {string} */ key) {
    const tile = tiles.get(key)
    if (!tile) return
    tiles.forEach((other) => other.classList.remove("tally-lit"))
    tile.classList.add("tally-lit")
    setTimeout(() => tile.classList.remove("tally-lit"), 150)
  }
}

const number = (/** @type {number} */ value) =>
  el("span", { class: value === 0 ? "tally-count tally-none" : "tally-count" }, String(value))

/**
 * Wet glass presses by itself: a touch of under 60 ms, or of two fingers, is none. A key counts
 * when it is let go inside.
 *
 * @param {HTMLElement} tile
 * @param {(down: number) => unknown} press
 */
function guard(tile, press) {
  let down = 0
  let touches = 0
  tile.addEventListener("touchstart", (event) => (touches = event.touches.length), {
    passive: true,
  })
  tile.addEventListener("pointerdown", (event) => (down = event.timeStamp))
  tile.addEventListener("click", (event) => {
    const byPointer = event.detail > 0
    const touched = /** @type {PointerEvent} */ (event).pointerType === "touch"
    if (touched && (touches > 1 || event.timeStamp - down < WATER)) return
    press(event.timeStamp)
    // The keyboard belongs to the filter again, not to the tile.
    if (byPointer) tile.blur()
  })
}
