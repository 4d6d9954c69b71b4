// Two pages that count at once would count one filter twice: only one may, and the newer may take
// over. Over plain http browsers have no locks; nothing is lost there either, since each press has
// a number of its own, but nobody is warned.

import { el } from "#js/lib/dom.js"
import { speaker } from "#js/lib/words.js"

/** Told to the page that has to let go. */
export const GONE = "jarwise-gone"

/**
 * @param {string} nursery
 * @param {HTMLElement} main
 * @param {any} sheet
 * @param {() => Promise<void>} run
 */
export async function holdAlone(nursery, main, sheet, run) {
  const say = speaker(sheet.words)
  const name = "jarwise-microscope-" + nursery
  if (!navigator.locks || (await held(name, { ifAvailable: true }, gone))) return run()
  main.replaceChildren(...notice(say, "tally.alone.other", take))

  async function take() {
    await held(name, { steal: true }, gone)
    await run()
  }

  /** Nothing of this page listens any more; it starts anew when it is wanted again. */
  function gone() {
    dispatchEvent(new Event(GONE))
    main.replaceChildren(...notice(say, "tally.alone.gone", () => location.reload()))
  }
}

/**
 * @param {string} name
 * @param {LockOptions} how
 * @param {() => void} gone
 * @returns {Promise<boolean>} whether this page has the lock now, and keeps it until it is closed
 */
function held(name, how, gone) {
  return new Promise((resolve) => {
    navigator.locks
      .request(name, how, (lock) => {
        resolve(lock !== null)
        return lock ? new Promise(() => {}) : undefined
      })
      .catch(gone)
  })
}

function notice(
  /** @type {ReturnType<typeof speaker>} */ say,
  /** @type {string} */ words,
  /** @type {() => void} */ take,
) {
  return [
    el("h1", {}, say("tally.alone.title")),
    el("p", {}, say(words)),
    el("button", { type: "button", class: "tally-go", onclick: take }, say("tally.alone.here")),
  ]
}
