// Where to go, whether it may be entered, and whether this is the right jar.

import { el } from "#js/lib/dom.js"
import { momentOf } from "#js/lib/time.js"
import { codeEntry } from "#js/walk/code-entry.js"
import { closed as keptOut } from "#js/walk/entry.js"
import { isOfCrop, isToCut, nextToCut } from "#js/walk/flow.js"
import { answer, answers, bar, heading, lead, text, typedForm } from "#js/walk/pieces.js"
import { benchPlan } from "#js/walk/bench-plan.js"

/** @typedef {import("#js/walk/app.js").App} App */

export function go(/** @type {App} */ app) {
  const jar = nextToCut(app.jars(), app.session().later ?? [])
  if (!jar) return []
  const ofBench = app.jars().filter((one) => one.bench === jar.bench && isOfCrop(one))
  const number = ofBench.findIndex((one) => one.code === jar.code) + 1
  const shut = keptOut(app.sheet().noEntry, jar, app.now())
  const early = (app.session().early ?? {})[jar.bench]
  const cut = app.jars().filter((one) => isOfCrop(one) && !isToCut(one)).length
  const all = app.jars().filter(isOfCrop).length
  const later = () =>
    app.show({ later: [...(app.session().later ?? []).filter(not(jar.code)), jar.code] })
  const head = [bar(app, app.say("walk.cut-of", cut, all)), heading(app.say("walk.go"), jar.bench)]
  if (shut && !early) {
    return [
      ...head,
      el(
        "div",
        { class: "walk-stop", role: "alert" },
        el("h2", {}, app.say("walk.stop")),
        el("p", {}, closedWords(app, jar, shut)),
      ),
      answers(
        answer(app.say("walk.go.later"), later, "main"),
        answer(app.say("walk.early"), () => app.show({ screen: "early", jar: jar.code })),
      ),
    ]
  }
  return [
    ...head,
    lead(jar.variety),
    benchPlan(app, jar, app.session().atBench),
    text(
      app.say("walk.jar-of", number, ofBench.length) + " " + app.say("walk.purpose." + jar.purpose),
    ),
    early ? text(app.say("walk.early.recorded", early.early_entry_by)) : null,
    answers(
      answer(
        app.say("walk.go.here", jar.bench),
        () => app.show({ screen: "label", jar: jar.code, atBench: jar.bench, draft: {} }),
        "main",
      ),
      answer(app.say("walk.go.later"), later, "plain"),
    ),
  ]
}

const not = (/** @type {string} */ code) => (/** @type {string} */ other) => other !== code

function closedWords(/** @type {App} */ app, /** @type {any} */ jar, /** @type {any} */ shut) {
  if (shut.until === null) return app.say("walk.closed.unknown", jar.bench)
  const { zone, language } = app.sheet()
  return app.say("walk.closed.until", jar.bench, momentOf(new Date(shut.until), zone, language))
}

/** An exception has a name, a reason and what is worn; all three go on record with the cut. */
export function early(/** @type {App} */ app) {
  const jar = app.jar()
  const asked = ["by", "reason", "protection"]
  const given = app.session().given ?? {}
  const next = asked.find((one) => !given["early_entry_" + one]) ?? "protection"
  const field = el("input", { id: "early", autocomplete: "off" })
  return [
    bar(app, jar?.bench ?? ""),
    heading(app.say("walk.early." + next)),
    lead(app.say("walk.early.law")),
    typedForm(app, app.say("walk.early." + next), field, () => {
      const typed = /** @type {HTMLInputElement} */ (field).value.trim().slice(0, 200)
      if (!typed) return app.say("walk.early.needed")
      const now = { ...given, ["early_entry_" + next]: typed }
      const complete = asked.every((one) => now["early_entry_" + one])
      const early = { ...app.session().early, ...(complete && { [jar?.bench ?? ""]: now }) }
      app.show(complete ? { screen: "start", early, given: {} } : { given: now })
      return ""
    }),
    answers(answer(app.say("walk.back"), () => app.show({ screen: "start", given: {} }), "plain")),
  ]
}

/** Before anything is cut: is this the jar with that label? */
export function label(/** @type {App} */ app, /** @type {any} */ leaving) {
  const jar = app.jar()
  if (!jar) return []
  const draft = {
    collected_on: app.today(),
    ...(app.session().early ?? {})[jar.bench],
  }
  return [
    bar(app, app.say("walk.at", jar.bench, jar.variety)),
    heading(app.say("walk.label"), jar.code),
    codeEntry(app, leaving, app.say("walk.label.code"), (code) => {
      const other = app.jar(code)
      if (!other) return app.say("walk.code.unknown", code)
      if (!isToCut(other)) return app.say("walk.code.cut", code)
      if (other.bench !== jar.bench) return app.say("walk.code.elsewhere", code, other.bench)
      app.show({ screen: "cut", jar: code, draft })
      return ""
    }),
  ]
}
