// Where the sheet begins: who walks, and which part of the work is next.

import { isToCut, isToFreeze, isToWash, nextToCut, phaseOf } from "#js/walk/flow.js"
import { answer, answers, bar, heading, lead, typedForm } from "#js/walk/pieces.js"
import { el } from "#js/lib/dom.js"
import * as freezer from "#js/walk/screens/freezer.js"
import * as go from "#js/walk/screens/go.js"
import * as wash from "#js/walk/screens/wash.js"

/** @typedef {import("#js/walk/app.js").App} App */

export function who(/** @type {App} */ app) {
  const people = app.sheet().people
  const choose = (/** @type {string} */ person) => app.show({ person, screen: "start" })
  const field = el("input", { id: "person", autocomplete: "off", autocapitalize: "characters" })
  return [
    heading(app.say("walk.who")),
    lead(app.say("walk.who.why")),
    answers(...people.map((/** @type {string} */ one) => answer(one, () => choose(one)))),
    people.length > 0
      ? null
      : typedForm(app, app.say("walk.who.code"), field, () => {
          const person = /** @type {HTMLInputElement} */ (field).value.trim().slice(0, 60)
          if (!person) return app.say("walk.who.needed")
          choose(person)
          return ""
        }),
  ]
}

export function start(/** @type {App} */ app, /** @type {any} */ leaving) {
  const jars = app.jars()
  const chosen = app.session().phase
  const toCut = nextToCut(jars, app.session().later ?? [])
  if (chosen === "wash" && jars.some(isToWash)) return wash.fluid(app, leaving)
  if (chosen === "freezer" && jars.some(isToFreeze)) return freezer.lid(app, leaving)
  if ((chosen ?? "walk") === "walk" && toCut) return go.go(app)
  return between(app)
}

/** One part is done: what comes next is said, and nothing starts by itself. */
function between(/** @type {App} */ app) {
  const jars = app.jars()
  const next = phaseOf(jars)
  const begin = () => app.show({ phase: next, screen: "start" })
  if (next === "done") {
    return [
      bar(app, app.sheet().round.id),
      heading(app.say("walk.done.title")),
      lead(app.say("walk.done.lead")),
    ]
  }
  const waits = { walk: isToCut, wash: isToWash, freezer: isToFreeze }[next]
  const number = jars.filter(waits).length
  return [
    bar(app, app.sheet().round.id),
    heading(app.say("walk.next." + next)),
    lead(app.count("walk.waiting." + next + ".", number)),
    answers(answer(app.say("walk.begin." + next), begin, "main")),
  ]
}
