// The state of the microscope page and how it changes from filter to filter.

import { deskTime } from "#js/lib/clock.js"
import { queue } from "#js/sync/outbox.js"
import { dayOf } from "#js/lib/time.js"
import { counter, speaker } from "#js/lib/words.js"
import { filterOf } from "#js/tally/derived.js"
import { dueFilters } from "#js/tally/opening.js"
import { adviceNow } from "#js/tally/stopping.js"
import { GONE } from "#js/tally/alone.js"
import { countingOf, openingDeeds } from "#js/tally/begin.js"
import { createHearing } from "#js/tally/hearing.js"
import { openKnown } from "#js/tally/known-here.js"
import { namesOf } from "#js/tally/names.js"
import { footWords } from "#js/tally/shown.js"
import { openSession } from "#js/tally/session.js"
import { doneWords, openedWords } from "#js/tally/where.js"
import { createVoice } from "#js/tally/voice.js"
import { openMenu } from "#js/tally/dialogs/menu.js"
import { countScreen } from "#js/tally/screens/count.js"
import { openScreen } from "#js/tally/screens/open.js"
import { seededScreen } from "#js/tally/screens/seeded.js"
import { createBreaks } from "#js/tally/breaks.js"

/**
 * @param {HTMLElement} main
 * @param {any} log
 * @param {any} first what the server last told
 */
export async function createApp(main, log, first) {
  const device = await log.device()
  const session = await openSession(log, first.person)
  const known = await openKnown(log, first)
  const { sheet } = known
  const { choose } = session
  /** By the desk’s clock. */
  const now = () => deskTime(sheet())
  let answer = { kind: "waiting" }
  /** @type {any} */
  let screen = { nodes: [], leave: () => {} }
  const breaks = createBreaks(now)
  const say = (/** @type {any[]} */ ...words) => speaker(sheet().words)(...words)
  const voice = createVoice({
    language: sheet().language,
    mode: session.now().mode,
    shown: (words) => app.shown(words),
  })

  /** @type {any} */
  const app = {
    log,
    now,
    voice,
    say,
    count: (/** @type {any[]} */ ...words) => counter(say)(...words),
    sheet,
    session: session.now,
    shown: () => {},
    isOld: () => known.program() !== main.dataset.program,
    /** What is kept here, and what of it the desk has. */
    async foot(/** @type {HTMLElement} */ line, /** @type {number | undefined} */ presses) {
      const sent = await queue(log, now())
      line.textContent = footWords(app, { presses, ...sent, answer })
      line.classList.toggle("tally-late", sent.late)
    },
    ...namesOf(sheet, () => screen.counting?.profiles[0].pest ?? ""),
    due: () => dueFilters(sheet().filters, now()),
    secondsPerCell: () =>
      sheet().secondsPerCell[session.now().person] ?? sheet().secondsPerCell[""],
    advice: (/** @type {any} */ counting, /** @type {any} */ state) =>
      adviceNow(sheet(), counting, state),
    choose,
    open,
    ended,
    next: async () => {
      await choose({ filter: undefined })
      await known.look()
      show(openScreen(app))
      voice.say(say("tally.said.next"))
      await app.refresh()
    },
    goTo: (/** @type {string} */ cell) => screen.goTo?.(cell),
    finish: () => screen.finish?.(),
    /** Listens anew, after the keys have changed; or counts anew, after the pests have. */
    async again(counts = false) {
      const { counting } = screen
      if (counting) show(countScreen(app, counts ? await start() : counting))
    },
    menu: (/** @type {any} */ counting) => openMenu(app, counting),
    heard: (/** @type {any} */ what) => heard(what),
    recorded: () => {},
    /** Asks the server for what waits now; set by the page. */
    refresh: async () => {},
    renew: (/** @type {any} */ fresh) => known.renew(fresh).then(() => screen.renewed?.()),
    answered(/** @type {any} */ how) {
      answer = how
      screen.foot?.()
    },
  }
  const heard = createHearing(app)
  document.documentElement.lang = sheet().language
  addEventListener(GONE, () => screen.leave())
  show(session.now().filter ? countScreen(app, await start()) : openScreen(app))
  return app

  function show(/** @type {any} */ next) {
    screen.leave()
    screen = next
    main.replaceChildren(...screen.nodes.filter((/** @type {any} */ node) => node !== null))
  }

  /** Opens a filter by its code; what is already counted of it is there again. */
  async function open(/** @type {string} */ code, /** @type {any} */ { person, passes, wash }) {
    const filter = filterOf(sheet(), code, {
      wash,
      device,
      readings: session.now().readings?.[code] ?? 0,
      today: dayOf(new Date(now()), sheet().zone),
    })
    await choose({ person, filter, passes: filter.wholeOnly ? 1 : Number(passes || 1) })
    const counting = await start()
    const deeds = openingDeeds(counting, code)
    if (deeds.length > 0) await counting.record(deeds)
    show(countScreen(app, counting))
    voice.say(openedWords(app, counting))
    breaks.began()
  }

  function start() {
    return countingOf(sheet(), session.now(), { log, now, heard, changed })
  }

  function changed(/** @type {any} */ what) {
    screen.changed?.(what)
    app.recorded()
  }

  async function ended(/** @type {any} */ counting) {
    const { filter } = counting
    const readings = { ...session.now().readings }
    if (filter.placed) readings[filter.label] = (readings[filter.label] ?? 0) + 1
    await choose({ readings })
    app.recorded()
    heard({ kind: "done" })
    const rest = breaks.ended() ? " " + say("tally.said.break") : ""
    if (filter.placed) return show(seededScreen(app, counting, rest))
    screen.changed?.({ kind: "done" })
    voice.say(doneWords(app, counting) + rest + " " + say("tally.said.then-next"))
  }
}
