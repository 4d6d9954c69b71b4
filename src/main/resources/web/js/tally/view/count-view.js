// What is seen while a filter is counted. Built once; each press changes what it must.

import { el, renew } from "#js/lib/dom.js"
import { totalOf, undoable } from "#js/tally/reading.js"
import { adviceWords, besideCell, looked } from "#js/tally/shown.js"
import { feedOf } from "#js/tally/view/feed.js"
import { filterPicture } from "#js/tally/view/filter-picture.js"
import { createKeypad } from "#js/tally/view/keypad.js"
import { headOf } from "#js/tally/view/head.js"

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 * @param {{ press(key: string, down: number): unknown, hold(key: string): unknown,
 *   menu(): unknown }} deeds
 */
export function createCountView(app, counting, { press, menu }) {
  const keypad = createKeypad(app.say, press)
  const picture = el("div", { class: "tally-picture" })
  const name = el("div", { class: "tally-cell-name" })
  const beside = el("div", { class: "tally-beside" })
  const feed = el("ol", { class: "tally-feed", "aria-label": app.say("tally.feed") })
  const advice = el("p", { class: "tally-advice" })
  const said = el("p", { class: "tally-said", role: "status" })
  const away = el("div", { class: "tally-away", hidden: true, role: "alert" })
  const foot = el("p", { class: "tally-foot" })
  const more = el(
    "button",
    { type: "button", class: "tally-more", onclick: menu },
    app.say("tally.more"),
  )
  app.shown = (/** @type {string} */ words) => (said.textContent = words)
  // A screen reader and the page's own voice must not talk over each other.
  said.setAttribute(
    "aria-live",
    app.voice.mode() === "speech" && app.voice.canSpeak() ? "off" : "polite",
  )
  let frame = 0
  /** @type {any} */
  let latest
  const where = el("div", { class: "tally-where" }, name, beside)
  const nodes = [
    headOf(app, counting),
    picture,
    where,
    feed,
    ...keypad.nodes(),
    more,
    advice,
    said,
    foot,
    away,
  ]
  return { nodes, show, foot: showFoot, flash: keypad.flash, away: showAway }

  /** Drawn with the next picture of the screen: many presses at once are drawn once. */
  function show(/** @type {any} */ heard) {
    if (frame === 0) frame = requestAnimationFrame(() => draw(latest))
    latest = heard
  }

  function draw(/** @type {any} */ heard) {
    frame = 0
    const state = counting.state()
    const { counts } = state.filter
    const now = app.advice(counting, state)
    const words = adviceWords(app, state, now, app.secondsPerCell())
    name.textContent = state.current || app.say(state.filter.done ? "tally.done" : "tally.end")
    name.classList.toggle("tally-cell-words", state.current === "")
    showBeside(state)
    showPicture(state)
    renew(
      feed,
      ...feedOf(counting.own(), { say: app.say, nameOf: app.stageName, markOf: app.markOf }),
    )
    keypad.show(counting.profile(), counts, {
      vouchers: state.filter.vouchers.length,
      obscured: looked(state).cellsObscured,
      offered: words.offered,
      undo: undoWords(),
      enter: enterWords(state, words.offered),
      done: state.then.length > 0 ? app.say("tally.key.then", state.then[0]) : "",
    })
    renew(advice, el("b", {}, words.lead), " " + words.rest)
    advice.classList.toggle("tally-advice-offered", words.offered)
    if (heard.kind === "count" && app.session().visual) showBig(heard, counts)
    showFoot()
  }

  function showPicture(/** @type {any} */ state) {
    const { cellsRead, cellsObscured } = looked(state)
    const fresh = filterPicture({
      rows: app.sheet().layout.rows,
      state,
      markOf: app.markOf,
      label: app.say("tally.picture", cellsRead, cellsObscured, state.left),
    })
    const shown = picture.firstElementChild
    if (!shown) return picture.append(fresh)
    shown.setAttribute("aria-label", fresh.getAttribute("aria-label") ?? "")
    renew(shown, ...fresh.childNodes)
  }

  function showBeside(/** @type {any} */ state) {
    const { then, read } = besideCell(app, state)
    const { pest, name: pestName } = counting.profile()
    const found = el("p", {}, el("b", {}, String(totalOf(state.filter.counts, pest))))
    found.append(" " + app.say("tally.on-this-filter", pestName))
    renew(beside, el("p", {}, then), found, el("p", {}, read))
  }

  /** For eyes instead of ears: what was counted, and how many there are, in place of the cell. */
  function showBig(/** @type {any} */ heard, /** @type {any} */ counts) {
    const { stage } = heard
    const number = String(counts[stage.pest]?.[stage.stage] ?? 0)
    beside.replaceChildren(el("p", { class: "tally-big" }, app.stageName(stage) + " " + number))
  }

  function undoWords() {
    const { taken } = undoable(counting.state(), counting.device) ?? {}
    if (!taken) return ""
    return taken.deed.deed === "counted"
      ? app.stageName(taken.deed)
      : app.say("tally.feed." + taken.deed.deed)
  }

  function enterWords(/** @type {any} */ state, /** @type {boolean} */ offered) {
    if (state.filter.done) return app.say("tally.key.next")
    return app.say(offered && !state.allRead ? "tally.key.partly" : "tally.key.finish")
  }

  function showFoot() {
    return app.foot(foot, counting.own().length)
  }

  function showAway(/** @type {boolean} */ is) {
    away.hidden = !is
    away.textContent = is ? app.say("tally.away") : ""
    if (!is) app.voice.say(app.say("tally.said.still", counting.state().current))
  }
}
