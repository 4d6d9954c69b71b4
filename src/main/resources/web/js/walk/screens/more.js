// Around the work: all jars, another part of it, a step taken back, a jar that came to grief.

import { el } from "#js/lib/dom.js"
import { momentOf } from "#js/lib/time.js"
import { isOfCrop, isToCut, isToFreeze, isToWash } from "#js/walk/flow.js"
import { answer, answers, heading, lead, typedForm } from "#js/walk/pieces.js"

/** @typedef {import("#js/walk/app.js").App} App */

export function more(/** @type {App} */ app) {
  const jars = app.jars()
  const open = {
    walk: jars.some(isToCut),
    wash: jars.some(isToWash),
    freezer: jars.some(isToFreeze),
  }
  const questions = jars.filter((jar) => jar.questions.length > 0)
  const jar = app.jar()
  const part = (/** @type {"walk" | "wash" | "freezer"} */ phase) =>
    open[phase]
      ? answer(app.say("walk.begin." + phase), () => app.show({ phase, screen: "start" }))
      : null
  return [
    heading(app.say("walk.more.title", app.sheet().round.id)),
    answers(
      answer(app.say("walk.go-on"), () => app.show({ screen: "start" }), "main"),
      part("walk"),
      part("wash"),
      part("freezer"),
      open.wash && app.session().fluid
        ? answer(app.say("walk.fluid.change"), () => app.show({ fluid: "", screen: "fluid" }))
        : null,
      app.lastStep() ? answer(app.say("walk.undo"), () => app.show({ screen: "undo" })) : null,
      jar
        ? answer(app.say("walk.wrong.with", jar.code), () => app.show({ screen: "wrong" }))
        : null,
      answer(
        app.say("walk.who.change", app.session().person),
        () => app.show({ person: "" }),
        "plain",
      ),
    ),
    questions.length > 0 ? lead(app.count("walk.questions.", questions.length)) : null,
    el("h2", {}, app.say("walk.all-jars")),
    el("ol", { class: "walk-list" }, ...jars.map((one) => el("li", {}, jarWords(app, one)))),
  ]
}

function jarWords(/** @type {App} */ app, /** @type {any} */ jar) {
  const where = isOfCrop(jar) ? jar.bench : app.say("walk.role." + jar.role)
  return `${jar.code}, ${where}: ${app.say("state." + jar.state)}`
}

/** Asked once more, with what would be taken back; the record and its slip both stay. */
export function undo(/** @type {App} */ app) {
  const step = app.lastStep()
  const back = answer(app.say("walk.undo.no"), () => app.goOn(), "plain")
  if (!step) return [heading(app.say("walk.undo.nothing")), answers(back)]
  const { zone, language } = app.sheet()
  const take = async () => {
    const slip = { device: step.device, sequence: step.sequence }
    const reason = app.say("walk.undo.reason")
    if (await app.record(step.sample, { deed: "voided", slip, reason })) await app.goOn()
  }
  return [
    heading(app.say("walk.undo.question")),
    lead(
      app.say(
        "walk.undo.step." + step.deed.step,
        step.sample,
        momentOf(new Date(step.at), zone, language),
        step.deed.facts?.sampling_units ?? "",
      ),
    ),
    answers(answer(app.say("walk.undo.yes"), take, "main"), back),
  ]
}

export function wrong(/** @type {App} */ app) {
  const jar = app.jar()
  const end = (/** @type {string} */ how) => app.show({ screen: "why", how })
  return [
    heading(app.say("walk.wrong.question"), jar?.code),
    lead(app.say("walk.wrong.no-zero")),
    answers(
      answer(app.say("walk.wrong.lost"), () => end("lost")),
      answer(app.say("walk.wrong.spilled"), () => end("spilled")),
      answer(app.say("walk.wrong.discarded"), () => end("discarded")),
      answer(app.say("walk.back"), () => app.goOn(), "plain"),
    ),
  ]
}

export function why(/** @type {App} */ app) {
  const { jar, how } = app.session()
  const field = el("input", { id: "reason", autocomplete: "off" })
  return [
    heading(app.say("walk.wrong.why"), jar),
    typedForm(app, app.say("walk.wrong.reason"), field, () => {
      const reason = /** @type {HTMLInputElement} */ (field).value.trim().slice(0, 300)
      if (!reason) return app.say("walk.wrong.needed")
      app
        .record(jar, { deed: "step", step: how, facts: {}, reason })
        .then((/** @type {boolean} */ kept) => (kept ? app.goOn() : undefined))
      return ""
    }),
    answers(answer(app.say("walk.back"), () => app.goOn(), "plain")),
  ]
}
