// The state of the sheet and how it changes. Screens ask it and tell it; they keep nothing.

import { deskTime } from "#js/lib/clock.js"
import { el } from "#js/lib/dom.js"
import { dayOf } from "#js/lib/time.js"
import { counter, speaker } from "#js/lib/words.js"
import { lastStep, walked } from "#js/walk/flow.js"
import { footWords, troubleWords } from "#js/walk/foot.js"
import { SCREENS } from "#js/walk/screens.js"

/** @typedef {Awaited<ReturnType<typeof createApp>>} App */

/**
 * @param {HTMLElement} main
 * @param {Awaited<ReturnType<typeof import("#js/sync/log.js").openLog>>} log
 * @param {any} sheet the round
 */
export async function createApp(main, log, sheet) {
  const device = await log.device()
  /** @type {any} */
  let session = await log.session()
  if (session.round !== sheet.round.id) session = { round: sheet.round.id }
  session.person ||= sheet.person
  /** @type {any[]} */
  let own = []
  /** @type {() => unknown} */
  let recorded = () => {}
  /** @type {(() => void) | undefined} */
  let leave
  const screen = el("div", { class: "walk-screen" })
  const foot = el("div", { class: "walk-foot", role: "status" })
  await readOwn()

  const app = {
    sheet: () => sheet,
    /** By the desk’s clock: milliseconds since 1970. */
    now: () => deskTime(sheet),
    today: () => dayOf(new Date(deskTime(sheet)), sheet.zone),
    session: () => session,
    say: (/** @type {any[]} */ ...words) => speaker(sheet.words)(...words),
    count: (/** @type {any[]} */ ...words) => counter(speaker(sheet.words))(...words),
    jars: () => walked(sheet.jars, own),
    jar: (code = session.jar) => app.jars().find((jar) => jar.code === code),
    lastStep: () => lastStep(own),
    show,
    record,
    /** The next part of the day's work, or the one that was chosen. */
    goOn: () => show({ screen: "start", draft: {}, jar: "", lid: "", base: "" }),
    onRecorded: (/** @type {() => unknown} */ hear) => (recorded = hear),
    async renew(/** @type {any} */ fresh) {
      sheet = fresh
      await readOwn()
    },
    foot(/** @type {any} */ state, /** @type {any} */ answer) {
      foot.className = state.late || answer.kind === "refused" ? "walk-foot walk-late" : "walk-foot"
      foot.textContent = footWords(app, state, answer)
    },
  }

  main.replaceChildren(screen, foot)
  document.documentElement.lang = sheet.language
  await draw(false)
  return app

  async function readOwn() {
    own = (await log.events()).map((event) => ({ ...event, device }))
  }

  /** Goes to a screen; what is half answered is kept before it is shown. */
  async function show(/** @type {any} */ changes) {
    session = { ...session, ...changes }
    await log.keepSession(session)
    await draw(true)
  }

  async function draw(/** @type {boolean} */ moved) {
    leave?.()
    leave = undefined
    const name = session.person ? session.screen ?? "start" : "who"
    const nodes = SCREENS[name](app, (/** @type {() => void} */ ending) => (leave = ending))
    screen.replaceChildren(...nodes.filter((/** @type {any} */ node) => node !== null))
    if (moved) {
      scrollTo(0, 0)
      screen.querySelector("h1")?.focus()
    }
  }

  /** Kept on the disk first; only then does the screen go on. */
  async function record(/** @type {string} */ sample, /** @type {object} */ deed) {
    const at = new Date(deskTime(sheet)).toISOString()
    try {
      await log.append([{ sample, at, person: session.person, deed }])
    } catch (fault) {
      console.warn("Not kept", fault)
      foot.className = "walk-foot walk-late"
      foot.textContent = troubleWords(app, fault)
      return false
    }
    await readOwn()
    await recorded()
    return true
  }
}
