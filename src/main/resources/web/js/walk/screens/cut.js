// What was really cut, and what was seen there: one question a screen, one record at the end.

import { el } from "#js/lib/dom.js"
import { isOfCrop } from "#js/walk/flow.js"
import { spotPicture } from "#js/walk/bench-plan.js"
import { answer, answers, bar, heading, lead, numberForm, pairs, text } from "#js/walk/pieces.js"

/** @typedef {import("#js/walk/app.js").App} App */

const MOST_ON_BUTTONS = 20

export function cut(/** @type {App} */ app) {
  const jar = app.jar()
  if (!jar) return []
  const planned = jar.growingPoints
  const near = [planned, planned - 1, planned - 2].filter((number) => number > 0)
  return [
    place(app),
    heading(app.count("walk.cut.title.", planned)),
    jar.spot ? spotPicture(app, jar.spot) : lead(app.say("walk.purpose.targeted")),
    text(app.say("walk.cut.how")),
    el("h2", {}, app.say("walk.cut.question")),
    pairs(
      ...near.map((number) => answer(String(number), () => wasCut(app, number))),
      answer(app.say("walk.cut.other"), () => app.show({ screen: "cutOther" })),
    ),
  ]
}

export function cutOther(/** @type {App} */ app) {
  const numbers = Array.from({ length: MOST_ON_BUTTONS }, (_, i) => i + 1)
  return [
    place(app),
    heading(app.say("walk.cut.question")),
    el(
      "div",
      { class: "walk-answers walk-many" },
      ...numbers.map((number) => answer(String(number), () => wasCut(app, number))),
    ),
    answers(
      answer(app.say("walk.cut.none"), () => app.show({ screen: "wrong" })),
      answer(app.say("walk.back"), () => app.show({ screen: "cut" }), "plain"),
    ),
  ]
}

const wasCut = (/** @type {App} */ app, /** @type {number} */ number) =>
  note(app, { sampling_units: number }, "damage")

export function damage(/** @type {App} */ app) {
  return [
    place(app),
    heading(app.say("walk.damage.question")),
    answers(
      ...[0, 1, 2, 3].map((score) =>
        answer(app.say("walk.damage." + score), () => note(app, { damage: score }, "seen")),
      ),
    ),
  ]
}

export function seen(/** @type {App} */ app) {
  const jar = app.jar()
  const first = !(app.session().benchesAsked ?? []).includes(jar?.bench)
  const next = first ? "bench" : ""
  return [
    place(app),
    heading(app.say("walk.beneficials.question")),
    pairs(
      answer(app.say("walk.none-seen"), () => note(app, { beneficials: 0 }, next)),
      ...[1, 2].map((number) =>
        answer(String(number), () => note(app, { beneficials: number }, next)),
      ),
      answer(app.say("walk.more-than", 2), () => app.show({ screen: "seenMore" })),
    ),
    answers(answer(app.say("walk.not-looked"), () => note(app, {}, next), "plain")),
  ]
}

export function seenMore(/** @type {App} */ app) {
  const first = !(app.session().benchesAsked ?? []).includes(app.jar()?.bench)
  return number(app, "walk.beneficials.question", { beneficials: 0 }, first ? "bench" : "")
}

/** Taps and the card belong to the bench: they are asked for once, with its first jar. */
export function bench(/** @type {App} */ app) {
  const jar = app.jar()
  const benchesAsked = [...(app.session().benchesAsked ?? []), jar?.bench]
  return [
    place(app),
    heading(app.say("walk.bench.question", jar?.bench ?? "")),
    answers(
      answer(app.say("walk.bench.nothing"), () => finish(app, { benchesAsked }), "main"),
      answer(app.say("walk.bench.taps"), () => app.show({ screen: "tapped" })),
      answer(app.say("walk.bench.card"), () => app.show({ screen: "card" })),
    ),
  ]
}

export const tapped = (/** @type {App} */ app) =>
  number(app, "walk.taps.plants", { tapped_plants: 1 }, "fell")

export const fell = (/** @type {App} */ app) =>
  number(app, "walk.taps.insects", { tapped_insects: 0 }, "bench")

export const card = (/** @type {App} */ app) =>
  number(app, "walk.card.insects", { card_insects: 0 }, "bench")

/**
 * @param {App} app
 * @param {string} question
 * @param {Record<string, number>} fact its name with the least it can be
 * @param {string} next
 */
function number(app, question, fact, next) {
  const [[name, least]] = Object.entries(fact)
  return [
    place(app),
    heading(app.say(question)),
    numberForm(app, app.say("walk.number"), { least, most: 9999 }, (typed) =>
      note(app, { [name]: typed }, next),
    ),
    answers(answer(app.say("walk.back"), () => app.show({ screen: next || "seen" }), "plain")),
  ]
}

function place(/** @type {App} */ app) {
  const jar = app.jar()
  return bar(app, `${jar?.bench}, ${jar?.code}`)
}

/** @type {(app: App, facts: Record<string, number>, next: string) => unknown} */
function note(app, facts, next) {
  const texts = Object.entries(facts).map(([name, value]) => [name, String(value)])
  const draft = { ...app.session().draft, ...Object.fromEntries(texts) }
  return next ? app.show({ draft, screen: next }) : finish(app, { draft })
}

async function finish(/** @type {App} */ app, /** @type {any} */ changes) {
  const jar = app.jar()
  const { sampling_units: points, ...seen } = { ...app.session().draft, ...changes.draft }
  if (!jar || !isOfCrop(jar)) return
  const facts = { sampling_units: points, ...seen }
  const kept = await app.record(jar.code, { deed: "step", step: "cut", facts })
  if (kept) await app.show({ ...changes, screen: "start", jar: "", draft: {} })
}
