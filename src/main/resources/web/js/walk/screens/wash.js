// At the wash bench: the fluid once, then jar by jar.

import { codeEntry } from "#js/walk/code-entry.js"
import { isOfCrop, isToWash } from "#js/walk/flow.js"
import { answer, answers, bar, heading, lead, numberForm, text } from "#js/walk/pieces.js"

/** @typedef {import("#js/walk/app.js").App} App */

export function fluid(/** @type {App} */ app, /** @type {any} */ leaving) {
  if (app.session().fluid) return which(app, leaving)
  const choose = (/** @type {string} */ fluid) =>
    app.show({ fluid, screen: fluid === "alcohol" ? "caution" : "which" })
  return [
    bar(app, app.say("walk.phase.wash")),
    heading(app.say("walk.fluid.question")),
    lead(app.say("walk.fluid.once")),
    answers(
      ...["soap", "alcohol", "water"].map((one) =>
        answer(app.say(one === "water" ? "walk.fluid.water" : "walk.fluid." + one), () =>
          choose(one),
        ),
      ),
    ),
  ]
}

/** Said once a session, before the first jar. */
export function caution(/** @type {App} */ app) {
  return [
    bar(app, app.say("walk.phase.wash")),
    heading(app.say("walk.caution.title")),
    lead(app.say("walk.caution.alcohol")),
    answers(
      answer(app.say("walk.caution.done"), () => app.show({ screen: "which" }), "main"),
      answer(app.say("walk.back"), () => app.show({ fluid: "", screen: "fluid" }), "plain"),
    ),
  ]
}

export function which(/** @type {App} */ app, /** @type {any} */ leaving) {
  const waiting = app.jars().filter(isToWash)
  if (waiting.length === 0) {
    return [
      bar(app, app.say("walk.phase.wash")),
      heading(app.say("walk.washed.title")),
      answers(answer(app.say("walk.go-on"), () => nextPart(app), "main")),
    ]
  }
  const blank = waiting.find((jar) => !isOfCrop(jar))
  return [
    bar(app, app.say("walk.fluid.with", app.say("fluid." + app.session().fluid))),
    heading(app.say("walk.which")),
    lead(app.count("walk.waiting.wash.", waiting.length)),
    blank ? text(app.say("walk.control." + blank.role, blank.code)) : null,
    codeEntry(app, leaving, app.say("walk.label.code"), (code) => {
      const jar = app.jar(code)
      if (!jar) return app.say("walk.code.unknown", code)
      if (!isToWash(jar)) {
        return app.say("walk.code.not-to-wash", code, app.say("state." + jar.state))
      }
      const draft = isOfCrop(jar) ? {} : { collected_on: app.today() }
      const next = { crop: "fill", spike: "known" }[jar.role] ?? "shake"
      app.show({ screen: next, jar: code, draft })
      return ""
    }),
  ]
}

const nextPart = (/** @type {App} */ app) => app.show({ phase: "", screen: "start" })

export function fill(/** @type {App} */ app) {
  const choose = (/** @type {string} */ fill) =>
    app.show({ screen: "shake", draft: { ...app.session().draft, fill } })
  return [
    bar(app, place(app)),
    heading(app.say("walk.fill.question")),
    lead(app.say("walk.fill.why")),
    answers(
      answer(app.say("walk.fill.loose"), () => choose("loose")),
      answer(app.say("walk.fill.packed"), () => choose("packed")),
    ),
  ]
}

export function known(/** @type {App} */ app) {
  return [
    bar(app, place(app)),
    heading(app.say("walk.known.question")),
    lead(app.say("walk.known.why")),
    numberForm(app, app.say("walk.number"), { least: 0, most: 9999 }, (number) =>
      app.show({ screen: "shake", draft: { ...app.session().draft, known: String(number) } }),
    ),
  ]
}

/** @param {App} app */
export function place(app) {
  const jar = app.jar()
  if (!jar) return ""
  return (isOfCrop(jar) ? jar.bench : app.say("walk.role." + jar.role)) + ", " + jar.code
}
