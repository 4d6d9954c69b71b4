// The screen on which a filter is counted.

import { createEnding } from "#js/tally/finish.js"
import { createGoTo } from "#js/tally/go-to.js"
import { listen } from "#js/tally/keyboard.js"
import { spelled } from "#js/tally/presses.js"
import { whereWords } from "#js/tally/where.js"
import { createCountView } from "#js/tally/view/count-view.js"

/** @type {Record<string, string>} words of the keys that are no stage */
const WORDS = {
  0: "done",
  ".": "obscured",
  "-": "undo",
  "+": "voucher",
  "/": "before",
  "*": "after",
}

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 * @returns {{ nodes: HTMLElement[], leave: () => void, changed: (heard: any) => void,
 *   foot: () => void, counting: any, goTo: (cell: string) => unknown, finish: () => unknown }}
 */
export function countScreen(app, counting) {
  const cells = counting.walk.flat()
  const goTo = createGoTo(cells)
  let pressed = ""
  const ending = createEnding(counting, { cellsInAll: cells.length })
  const view = createCountView(app, counting, {
    press: typed,
    hold,
    menu: () => app.menu(counting),
  })
  const leave = listen(
    {
      press: typed,
      hold,
      early: () => tell(ending.refusal(["tally.refused.hold"])),
      refused: (why, key) => tell(ending.refusal(refusal(why, key))),
      away: (is) => view.away(is),
      idle: () => app.voice.say(app.say("tally.said.still", spelled(counting.state().current))),
      resting: () => document.querySelector("dialog[open]") !== null,
    },
    { pedal: app.session().pedal, letters: app.session().letters ?? true },
  )
  view.show({ kind: "open" })
  return {
    nodes: view.nodes,
    leave,
    changed: view.show,
    foot: view.foot,
    counting,
    goTo: (cell) => went({ done: true, cell }),
    finish: end,
  }

  function typed(/** @type {string} */ key, /** @type {number} */ down) {
    app.voice.wake()
    view.flash(key)
    pressed = key
    if (goTo.isOn()) return went(goTo.key(key))
    if (key === "Enter") return hold("Enter")
    return counting.press(key, down)
  }

  function hold(/** @type {string} */ key) {
    app.voice.wake()
    if (key === "/") {
      goTo.begin()
      return tell({ kind: "goes-to", words: ["tally.said.which-cell"] })
    }
    return key === "*" ? where() : end()
  }

  async function where() {
    await counting.settled()
    app.voice.say(whereWords(app, counting))
  }

  function went(/** @type {any} */ { done, cell, fault }) {
    if (!done) return tell({ kind: "click" })
    if (fault) return tell({ kind: "refused", words: ["tally.refused.no-cell", fault] })
    if (!cell)
      return tell({
        kind: "refused",
        words: ["tally.said.stay", spelled(counting.state().current)],
      })
    counting.goTo(cell)
    const one = counting.state().filter.cells.get(cell)
    const how = one?.obscured ? "obscured" : one?.read ? "read" : "unread"
    tell({
      kind: "goes-to",
      words: ["tally.said.went." + how, spelled(cell), one?.presses.length ?? 0],
    })
  }

  /** The filter ends, or what keeps it from ending is said; a done one makes way for the next. */
  async function end() {
    await counting.settled()
    if (counting.state().filter.done) return app.next(counting)
    const { end: may, words } = ending.asked()
    if (!may) return words && tell(ending.refusal(words))
    if (!(await counting.record(ending.deeds()))) return
    await app.ended(counting)
  }

  function refusal(/** @type {string} */ why, /** @type {string} */ key) {
    return ["tally.refused." + why, nameOf(why === "two-at-once" ? pressed : key)]
  }

  function nameOf(/** @type {string} */ key) {
    const stage = counting.profile().keys[key]
    return stage?.name ?? (WORDS[key] ? app.say("tally.key." + WORDS[key]) : key)
  }

  function tell(/** @type {any} */ heard) {
    app.heard(heard)
    view.show(heard)
  }
}
