// Without the server: the rounds that are on this phone.

import { el } from "#js/lib/dom.js"
import { speaker } from "#js/lib/words.js"

/**
 * @param {HTMLElement} main
 * @param {string} home
 * @param {{ rounds(): Promise<any[]> }} log
 */
export async function chooseRound(main, home, log) {
  const rounds = await log.rounds()
  if (rounds.length === 0) throw new Error("No round is on this phone")
  const sheets = rounds.sort((one, other) => (one.round.id < other.round.id ? 1 : -1))
  const say = speaker(sheets[0].words)
  document.documentElement.lang = sheets[0].language
  main.replaceChildren(
    el("h1", {}, say("walk.list.kept")),
    el(
      "div",
      { class: "walk-answers" },
      ...sheets.map(({ round }) =>
        el("a", { class: "walk-answer", href: `${home}/${round.id}` }, el("b", {}, round.id)),
      ),
    ),
  )
}
