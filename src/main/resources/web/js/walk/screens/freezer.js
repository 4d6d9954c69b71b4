// Into the freezer: a lid and a base that belong together, or a stop that nobody can pass.

import { el } from "#js/lib/dom.js"
import { momentOf } from "#js/lib/time.js"
import { codeEntry } from "#js/walk/code-entry.js"
import { isToFreeze } from "#js/walk/flow.js"
import { pairOf } from "#js/walk/pair.js"
import { pairPicture } from "#js/walk/pair-picture.js"
import { answer, answers, bar, heading, lead } from "#js/walk/pieces.js"

/** @typedef {import("#js/walk/app.js").App} App */

export function lid(/** @type {App} */ app, /** @type {any} */ leaving) {
  const waiting = app.jars().filter(isToFreeze)
  if (waiting.length === 0) {
    return [
      bar(app, app.say("walk.phase.freezer")),
      heading(app.say("walk.frozen.title")),
      answers(answer(app.say("walk.go-on"), () => nextPart(app), "main")),
    ]
  }
  return [
    bar(app, app.say("walk.phase.freezer")),
    heading(app.say("walk.lid")),
    lead(app.count("walk.waiting.freezer.", waiting.length)),
    codeEntry(app, leaving, app.say("walk.lid.label"), (code) => {
      if (!app.jar(code)) return app.say("walk.code.unknown", code)
      app.show({ screen: "base", lid: code })
      return ""
    }),
  ]
}

const nextPart = (/** @type {App} */ app) => app.show({ phase: "", screen: "start" })

export function base(/** @type {App} */ app, /** @type {any} */ leaving) {
  return [
    bar(app, app.say("walk.lid.read", app.session().lid)),
    heading(app.say("walk.base")),
    lead(app.say("walk.pair.why")),
    codeEntry(app, leaving, app.say("walk.base.label"), (code) => {
      if (!app.jar(code)) return app.say("walk.code.unknown", code)
      app.show({ screen: "pair", base: code })
      return ""
    }),
    answers(answer(app.say("walk.back"), () => app.show({ screen: "lid" }), "plain")),
  ]
}

export function pair(/** @type {App} */ app) {
  const { lid, base } = app.session()
  const washed = app.jars().filter(isToFreeze)
  const is = pairOf(lid, base, washed.map((jar) => jar.code))
  if (is === "pair") return belongTogether(app, base)
  const again = answer(app.say("walk.pair.again"), () => app.show({ screen: "lid" }), "main")
  if (is === "no-pair") {
    return [
      bar(app, app.say("walk.pair.not-stored")),
      stop(app, app.say("walk.pair.no", lid, base)),
      pairPicture(app, app.jar(lid), app.jar(base)),
      lead(el("b", {}, app.say("walk.pair.find", base)), " " + app.say("walk.pair.lids-only")),
      answers(again, answer(app.say("walk.wrong"), () => wrongWith(app, base), "plain")),
    ]
  }
  const state = app.say("state." + (app.jar(base)?.state ?? "planned"))
  return [
    bar(app, app.say("walk.pair.not-stored")),
    stop(app, app.say("walk.pair.not-washed", base, state)),
    answers(again),
  ]
}

const stop = (/** @type {App} */ app, /** @type {string} */ words) =>
  el(
    "div",
    { class: "walk-stop", role: "alert" },
    el("h1", { tabindex: -1 }, app.say("walk.stop")),
    el("p", {}, words),
  )

const wrongWith = (/** @type {App} */ app, /** @type {string} */ jar) =>
  app.show({ screen: "wrong", jar })

function belongTogether(/** @type {App} */ app, /** @type {string} */ code) {
  const jar = app.jar(code)
  const { protocol, zone, language } = app.sheet()
  const hours = (/** @type {number} */ from, /** @type {number} */ more) =>
    momentOf(new Date(from + more * 3600 * 1000), zone, language)
  const washed = Date.parse(jar?.records.washed?.at ?? "")
  const store = async () => {
    const facts = { lid: code, base: code }
    const kept = await app.record(code, { deed: "step", step: "freezer_in", facts })
    if (kept) await app.show({ screen: "lid", lid: "", base: "" })
  }
  return [
    bar(app, app.say("walk.phase.freezer")),
    heading(app.say("walk.pair.yes")),
    pairPicture(app, jar, jar),
    lead(app.say("walk.freezer.now")),
    el(
      "p",
      {},
      app.say(
        "walk.freezer.window",
        hours(app.now(), protocol.freezeHours),
        hours(washed, protocol.readWithinHours),
      ),
    ),
    answers(
      answer(app.say("walk.freezer.in"), store, "main"),
      answer(app.say("walk.pair.again"), () => app.show({ screen: "lid" }), "plain"),
    ),
  ]
}
