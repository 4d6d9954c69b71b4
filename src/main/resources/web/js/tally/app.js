// The state of the microscope page and how it changes from filter to filter.

import { dayOf } from "#js/lib/time.js"
import { counter, speaker } from "#js/lib/words.js"
import { filterOf } from "#js/tally/derived.js"
import { dueFilters } from "#js/tally/opening.js"
import { adviceNow } from "#js/tally/stopping.js"
import { GONE } from "#js/tally/alone.js"
import { countingOf, openingDeeds } from "#js/tally/begin.js"
import { spelled } from "#js/tally/presses.js"
import { sentence } from "#js/tally/sentence.js"
import { createVoice } from "#js/tally/voice.js"
import { openMenu } from "#js/tally/dialogs/menu.js"
import { countScreen } from "#js/tally/screens/count.js"
import { openScreen } from "#js/tally/screens/open.js"
import { seededScreen } from "#js/tally/screens/seeded.js"
import { createBreaks } from "#js/tally/breaks.js"

const SESSION = "microscope"

/**
 * @param {HTMLElement} main
 * @param {any} log
 * @param {any} sheet
 * @param {() => number} now milliseconds since 1970
 */
export async function createApp(main, log, sheet, now) {
  const device = await log.device()
  /** @type {any} */
  let session = { mode: "speech", letters: true, ...(await log.session(SESSION)) }
  session.person ||= sheet.person
  let answer = { kind: "waiting" }
  /** @type {any} */
  let screen = { nodes: [], leave: () => {} }
  const breaks = createBreaks(now)
  const say = (/** @type {any[]} */ ...words) => speaker(sheet.words)(...words)
  const voice = createVoice({
    language: sheet.language,
    mode: session.mode,
    shown: (words) => app.shown(words),
  })

  /** @type {any} */
  const app = {
    log,
    now,
    voice,
    say,
    count: (/** @type {any[]} */ ...words) => counter(say)(...words),
    sheet: () => sheet,
    session: () => session,
    shown: () => {},
    answer: () => answer,
    footText: () => say(answer.kind === "unreachable" ? "tally.foot.alone" : "tally.foot.there"),
    stageName: (/** @type {any} */ { pest, stage, life_stage: code = stage }) =>
      sheet.stages[pest]?.[code]?.name ?? code,
    markOf: (/** @type {string} */ pest, /** @type {string} */ stage) =>
      sheet.stages[pest]?.[stage]?.mark ?? "other",
    due: () => dueFilters(sheet.filters, now()),
    secondsPerCell: () => sheet.secondsPerCell[session.person] ?? sheet.secondsPerCell[""],
    advice: (/** @type {any} */ counting, /** @type {any} */ state) =>
      adviceNow(sheet, counting, state),
    choose,
    open,
    ended,
    next: async () => {
      await choose({ filter: undefined })
      show(openScreen(app))
    },
    goTo: (/** @type {string} */ cell) => screen.goTo?.(cell),
    finish: () => screen.finish?.(),
    /** Listens anew, after the keys have changed. */
    again: async () => screen.counting && show(countScreen(app, screen.counting)),
    menu: (/** @type {any} */ counting) => openMenu(app, counting),
    heard,
    recorded: () => {},
    async renew(/** @type {any} */ fresh) {
      sheet = fresh
    },
    answered(/** @type {any} */ how) {
      answer = how
      screen.foot?.()
    },
  }
  document.documentElement.lang = sheet.language
  addEventListener(GONE, () => screen.leave())
  show(session.filter ? countScreen(app, await start()) : openScreen(app))
  return app

  function show(/** @type {any} */ next) {
    screen.leave()
    screen = next
    main.replaceChildren(...screen.nodes.filter((/** @type {any} */ node) => node !== null))
  }

  async function choose(/** @type {any} */ changes) {
    session = { ...session, ...changes }
    await log.keepSession(session, SESSION)
  }

  /** Opens a filter by its code; what is already counted of it is there again. */
  async function open(/** @type {string} */ code, /** @type {any} */ { person, passes, wash }) {
    const filter = filterOf(sheet, code, {
      wash,
      device,
      readings: session.readings?.[code] ?? 0,
      today: dayOf(new Date(now()), sheet.zone),
    })
    await choose({ person, filter, passes: filter.wholeOnly ? 1 : Number(passes || 1) })
    const counting = await start()
    const deeds = openingDeeds(counting, code)
    if (deeds.length > 0) await counting.record(deeds)
    show(countScreen(app, counting))
    voice.say(say("tally.said.opened", spelled(counting.state().current)))
    breaks.began()
  }

  function start() {
    return countingOf(sheet, session, { log, now, heard, changed })
  }

  function changed(/** @type {any} */ what) {
    screen.changed?.(what)
    app.recorded()
  }

  /** Sound first, then words: both only after the press is on the disk. */
  function heard(/** @type {any} */ what) {
    const insect = what.kind === "count"
    const until = voice.play(insect ? { mark: what.mark, pest: what.pest } : { sound: what.kind })
    if (what.words) voice.say(sentence(app, what.words))
    return until
  }

  async function ended(/** @type {any} */ counting) {
    const { filter } = counting
    const readings = { ...session.readings }
    if (filter.placed) readings[filter.label] = (readings[filter.label] ?? 0) + 1
    await choose({ readings })
    app.recorded()
    if (filter.placed) {
      heard({ kind: "done" })
      return show(seededScreen(app, counting))
    }
    heard({ kind: "done" })
    screen.changed?.({ kind: "done" })
    const rest = breaks.ended() ? " " + say("tally.said.break") : ""
    voice.say(sentence(app, ["tally.said.done", counting]) + rest)
  }
}
