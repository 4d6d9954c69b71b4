// The shake with its clock, and what follows it.

import { answer, answers, bar, heading, lead, pairs, text } from "#js/walk/pieces.js"
import { dial, turn } from "#js/walk/dial.js"
import { place } from "#js/walk/screens/wash.js"
import { startSound } from "#js/walk/sound.js"
import { judge, target } from "#js/walk/timer.js"

/** @typedef {import("#js/walk/app.js").App} App */

export function shake(/** @type {App} */ app) {
  const limits = app.sheet().protocol
  return [
    bar(app, place(app)),
    heading(app.say("walk.shake.title")),
    lead(app.say("walk.shake.ready")),
    dial(limits, 0, String(target(limits)), app.say("walk.shake.to-shake")),
    limitsWords(app),
    answers(
      answer(app.say("walk.shake.start"), () => app.show({ screen: "shaking" }), "main"),
    ),
  ]
}

/** Starts with the screen; a page closed in the middle starts the clock again. */
export function shaking(/** @type {App} */ app, /** @type {any} */ leaving) {
  const limits = app.sheet().protocol
  const goal = target(limits)
  const started = performance.now()
  const sound = startSound()
  const face = dial(limits, 0, String(goal), app.say("walk.shake.to-go"))
  const seconds = () => Math.floor((performance.now() - started) / 1000)
  let rung = 0
  const tick = setInterval(() => {
    const now = seconds()
    const left = goal - now
    const words = app.say(left > 0 ? "walk.shake.to-go" : "walk.shake.over")
    turn(face, now, String(Math.abs(left)), words)
    const due = now >= limits.shakeSecondsMost ? 2 : now >= goal ? 1 : 0
    if (due > rung) sound.ring(due)
    rung = due
  }, 200)
  const awake = navigator.wakeLock?.request("screen").catch(() => undefined)
  leaving(() => {
    clearInterval(tick)
    sound.close()
    awake?.then((lock) => lock?.release())
  })
  const stop = () => {
    const draft = { ...app.session().draft, shake_seconds: String(seconds()) }
    return app.show({ screen: "shaken", draft })
  }
  return [
    bar(app, place(app)),
    heading(app.say("walk.shake.hard")),
    face,
    limitsWords(app),
    answers(answer(app.say("walk.shake.stop"), stop, "main")),
  ]
}

export function shaken(/** @type {App} */ app) {
  const limits = app.sheet().protocol
  const seconds = Number(app.session().draft.shake_seconds)
  const judged = judge(seconds, limits)
  const keep = answer(
    app.count("walk.shake.keep.", seconds),
    () => app.show({ screen: "foam" }),
    judged === "to-protocol" ? "main" : "",
  )
  const again = answer(
    app.say("walk.shake.again"),
    () => app.show({ screen: "shake" }),
    judged === "short" ? "main" : "plain",
  )
  return [
    bar(app, place(app)),
    heading(app.count("walk.shake." + judged + ".", seconds)),
    dial(limits, seconds, String(seconds), app.say("walk.shake.shaken")),
    judged === "to-protocol" ? null : lead(app.say("walk.shake.stored")),
    judged === "short" ? answers(again, keep) : answers(keep, again),
  ]
}

export function foam(/** @type {App} */ app) {
  const note = (/** @type {string} */ foam) =>
    app.show({ screen: "rinses", draft: { ...app.session().draft, foam } })
  return [
    bar(app, place(app)),
    heading(app.say("walk.foam.question")),
    lead(app.say("walk.foam.tip")),
    answers(
      answer(app.say("walk.foam.no"), () => note("no")),
      answer(app.say("walk.foam.yes"), () => note("yes")),
    ),
  ]
}

export function rinses(/** @type {App} */ app) {
  return [
    bar(app, place(app)),
    heading(app.say("walk.rinses.question")),
    lead(app.say("walk.rinses.tip")),
    pairs(
      ...[0, 1, 2, 3].map((number) => answer(String(number), () => washed(app, String(number)))),
    ),
  ]
}

async function washed(/** @type {App} */ app, /** @type {string} */ rinses) {
  const facts = { ...app.session().draft, fluid: app.session().fluid, rinses }
  const kept = await app.record(app.session().jar, { deed: "step", step: "washed", facts })
  if (kept) await app.show({ screen: "which", jar: "", draft: {} })
}

function limitsWords(/** @type {App} */ app) {
  const { shakeSecondsLeast, shakeSecondsMost } = app.sheet().protocol
  return text(app.say("walk.shake.limits", shakeSecondsLeast, shakeSecondsMost))
}
