// What is heard after a press: its sound first, then the words.

import { sentence } from "#js/tally/sentence.js"

/** @typedef {import("#js/tally/counting.js").Heard} Heard */

/**
 * @param {any} app
 * @returns {(what: Heard) => number} milliseconds until it is heard, NaN if it is not; to be called
 *   when the press is on the disk, not before
 */
export const createHearing = (app) => (what) => {
  const insect = what.kind === "count"
  const until = app.voice.play(insect ? { mark: what.mark, pest: what.pest } : { sound: what.kind })
  if (what.words) app.voice.say(sentence(app, what.words))
  return until
}
