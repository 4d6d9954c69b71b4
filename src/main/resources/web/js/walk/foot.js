// The state of the exchange, in words, at the foot of every screen.

/**
 * @param {any} app
 * @param {{ waiting: number, late: boolean }} state
 * @param {{ kind: string, sentence?: string }} answer
 * @returns {string}
 */
export function footWords(app, { waiting, late }, answer) {
  if (answer.kind === "refused") return app.say("walk.foot.refused", answer.sentence)
  if (waiting === 0) return app.say("walk.foot.all-sent") + plainWords(app)
  const here = app.count("walk.foot.waiting.", waiting)
  if (late) return app.say("walk.foot.late", here)
  const why =
    answer.kind === "page-too-old"
      ? "walk.foot.open-again"
      : answer.kind === "unreachable"
        ? "walk.foot.when-reached"
        : "walk.foot.being-sent"
  return here + " " + app.say(why) + plainWords(app)
}

/** Over plain http no page opens without its server: that must be known before the walk. */
const plainWords = (/** @type {any} */ app) =>
  globalThis.isSecureContext ? "" : " " + app.say("walk.foot.plain")

/**
 * @param {any} app
 * @param {any} fault
 */
export function troubleWords(app, fault) {
  const full = fault?.name === "QuotaExceededError"
  return app.say(full ? "walk.trouble.full" : "walk.trouble.not-kept", String(fault?.name ?? fault))
}
