// Lid and base as one drawing: aligned and joined, or shifted and broken.

import { svg } from "#js/lib/dom.js"

/**
 * @param {import("#js/walk/app.js").App} app
 * @param {any} lid the jar whose lid it is
 * @param {any} base
 */
export function pairPicture(app, lid, base) {
  const joined = lid.code === base.code
  const shift = joined ? 0 : 22
  const join = joined ? "walk-pair-join" : "walk-pair-break"
  const half = (/** @type {number} */ dx, /** @type {string} */ shape, /** @type {any} */ jar,
    /** @type {number} */ y, /** @type {string} */ words) =>
    svg(
      "g",
      { transform: `translate(${dx} 0)` },
      svg("path", { d: shape, class: "walk-pair-part" }),
      svg("text", { x: 164, y, class: "walk-pair-code" }, jar.code),
      svg("text", { x: 164, y: y + 30, class: "walk-pair-words" }, words + place(app, jar)),
    )
  return svg(
    "svg",
    { class: "walk-pair", viewBox: "0 0 328 214", role: "img" },
    svg("title", {}, app.say(joined ? "walk.pair.yes" : "walk.pair.no", lid.code, base.code)),
    half(-shift, "M24 4H304L298 84H30Z", lid, 40, app.say("walk.pair.lid") + ": "),
    svg("path", { d: "M44 102H118M210 102H284", class: join }),
    svg(
      "text",
      { x: 164, y: 108, class: "walk-pair-word" },
      app.say(joined ? "walk.pair.pair" : "walk.pair.none"),
    ),
    half(shift, "M24 120H304L286 210H42Z", base, 160, app.say("walk.pair.base") + ": "),
  )
}

const place = (/** @type {any} */ app, /** @type {any} */ jar) =>
  jar.bench || app.say("walk.role." + jar.role)
