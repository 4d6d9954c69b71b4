// The last five presses, the newest first.

import { el } from "#js/lib/dom.js"
import { markPicture } from "#js/tally/view/marks.js"

/**
 * @param {any[]} own the reader's events on this filter
 * @param {{ say: (key: string, ...values: any[]) => string, nameOf: (deed: any) => string,
 *   markOf: (pest: string, stage: string) => string }} words
 * @returns {HTMLElement[]}
 */
export function feedOf(own, { say, nameOf, markOf }) {
  const shown = own
    .filter(({ deed }) => deed.deed !== "step")
    .slice(-5)
    .reverse()
  return shown.map(({ deed }) => {
    const mark =
      deed.deed === "counted" ? markPicture(markOf(deed.pest, deed.life_stage), 20) : null
    const kind = deed.obscured ? "obscured" : deed.deed
    const name = deed.deed === "counted" ? nameOf(deed) : say("tally.feed." + kind)
    return el(
      "li",
      {},
      mark,
      el("span", {}, el("b", {}, name), el("small", {}, deed.filter_cell ?? "")),
    )
  })
}
