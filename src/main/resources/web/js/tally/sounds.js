// What a press sounds like. Species are told apart by timbre, stages by rhythm: common practice
// for sounds that must be known without looking; no source for the exact figures. Samples are
// worked out once, so that playing one takes no time. Everything lies between 150 Hz and 5 kHz, in
// one ear.

import { NOTES, note, PESTS, RHYTHMS, WOOD } from "#js/tally/sound-notes.js"

/** @typedef {import("#js/tally/sound-notes.js").Note} Note */

/** @returns {string[]} names of the sounds that are no insect */
export const plainSounds = () => Object.keys(NOTES)

/**
 * @param {{ sound: string } | { mark: string, pest: number }} what a sound, or a mark and the
 *   place of its pest in the list
 * @param {number} rate samples a second
 * @returns {Float32Array<ArrayBuffer>} −1 to 1
 */
export function render(what, rate) {
  if ("sound" in what) return rendered(NOTES[what.sound], rate)
  if (what.mark === "unsure") return hiss(0.14, rate)
  const timbre = what.mark === "enemy" ? WOOD : PESTS[what.pest % PESTS.length]
  const rhythm = RHYTHMS[what.mark] ?? RHYTHMS.other
  return rendered(
    rhythm.map(([at, length, hertz, to]) => note(at, length, hertz, timbre, to)),
    rate,
  )
}

/**
 * @param {Note[]} notes
 * @param {number} rate
 */
function rendered(notes, rate) {
  const end = Math.max(...notes.map(({ at, length }) => at + length)) + 0.02
  const samples = new Float32Array(Math.ceil(end * rate))
  for (const one of notes) write(one, samples, rate)
  const loudest = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)
  return samples.map((sample) => (0.8 * sample) / loudest)
}

/** Rises within 3 ms and falls within 8, so that nothing cracks. */
function write(
  /** @type {Note} */ one,
  /** @type {Float32Array} */ samples,
  /** @type {number} */ rate,
) {
  const { at, length, hertz, to = hertz, timbre } = one
  const first = Math.round(at * rate)
  const number = Math.round(length * rate)
  let turns = 0
  for (let i = 0; i < number && first + i < samples.length; i++) {
    const time = i / rate
    turns += (hertz + ((to - hertz) * i) / number) / rate
    const edge = Math.min(1, time / 0.003, (length - time) / 0.008)
    const loud = edge * Math.exp(-timbre.fade * time)
    let sum = 0
    for (const [ratio, share] of timbre.parts) sum += share * Math.sin(2 * Math.PI * ratio * turns)
    samples[first + i] += loud * sum
  }
}

/** A soft noise, the same every time. */
function hiss(/** @type {number} */ length, /** @type {number} */ rate) {
  const samples = new Float32Array(Math.ceil(length * rate))
  let seed = 1
  for (let i = 0; i < samples.length; i++) {
    seed = (seed * 48271) % 2147483647
    const edge = Math.min(1, i / (0.01 * rate), (samples.length - i) / (0.04 * rate))
    samples[i] = 0.5 * edge * ((2 * seed) / 2147483647 - 1)
  }
  return samples
}
