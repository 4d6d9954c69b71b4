// The notes of every sound. Pitches lie between 150 Hz and 5 kHz.

/** @typedef {{ at: number, length: number, hertz: number, to?: number, timbre: Timbre }} Note */
/** @typedef {{ parts: [ratio: number, share: number][], fade: number }} Timbre fade: 1/s */

/** @type {Timbre[]} by the place of a pest in the list, the one looked for most first */
export const PESTS = [
  {
    parts: [
      [1, 1],
      [2, 0.25],
    ],
    fade: 3,
  },
  {
    parts: [
      [1, 1],
      [3, 0.6],
      [5, 0.35],
      [7, 0.2],
    ],
    fade: 3,
  },
  {
    parts: [
      [1, 1],
      [2.76, 0.5],
      [5.4, 0.25],
    ],
    fade: 9,
  },
  {
    parts: [
      [1, 1],
      [2, 0.7],
      [3, 0.5],
      [4, 0.4],
      [5, 0.3],
    ],
    fade: 3,
  },
  {
    parts: [
      [1, 0.6],
      [4, 1],
    ],
    fade: 5,
  },
]
export const WOOD = {
  parts: [
    [1, 1],
    [2.6, 0.6],
  ],
  fade: 45,
}
const CHIME = {
  parts: [
    [1, 1],
    [2.76, 0.3],
  ],
  fade: 12,
}
const PLAIN = { parts: [[1, 1]], fade: 2 }
const ROUGH = {
  parts: [
    [1, 1],
    [2, 0.9],
    [3, 0.8],
    [4, 0.7],
    [5, 0.6],
    [6, 0.5],
  ],
  fade: 1,
}

/** Rhythm of each mark: starts and lengths in seconds, pitch, and where the pitch goes. */
export const RHYTHMS = {
  egg: [[0, 0.04, 1046]],
  larva1: [[0, 0.09, 523]],
  larva: [
    [0, 0.09, 523],
    [0.13, 0.09, 523],
  ],
  pupal: [
    [0, 0.05, 262],
    [0.085, 0.05, 262],
    [0.17, 0.05, 262],
  ],
  adult: [[0, 0.26, 330]],
  male: [[0, 0.26, 330, 560]],
  enemy: [
    [0, 0.09, 440],
    [0.12, 0.09, 440],
  ],
  other: [
    [0, 0.12, 392],
    [0.16, 0.12, 294],
  ],
}

/** Sounds that are no insect. */
export const NOTES = {
  click: [note(0, 0.012, 2200, { parts: [[1, 1]], fade: 300 })],
  fifth: [note(0, 0.012, 2200, { parts: [[1, 1]], fade: 300 }), note(0.05, 0.16, 1568, CHIME)],
  row: [note(0, 0.16, 1568, CHIME), note(0.12, 0.2, 2093, CHIME)],
  obscured: [
    note(0, 0.012, 2200, { parts: [[1, 1]], fade: 300 }),
    note(0.04, 0.2, 700, PLAIN, 300),
  ],
  undo: [note(0, 0.1, 659, PLAIN), note(0.11, 0.14, 440, PLAIN)],
  "undo-across": [
    note(0, 0.1, 659, PLAIN),
    note(0.11, 0.14, 440, PLAIN),
    note(0.3, 0.1, 659, PLAIN),
    note(0.41, 0.14, 440, PLAIN),
  ],
  voucher: [note(0, 0.1, 880, CHIME), note(0.1, 0.1, 1175, CHIME), note(0.2, 0.2, 1568, CHIME)],
  pest: [note(0, 0.06, 784, PLAIN)],
  "goes-to": [note(0, 0.06, 784, PLAIN), note(0.08, 0.06, 988, PLAIN)],
  pass: [note(0, 0.2, 1047, CHIME), note(0.18, 0.2, 1319, CHIME), note(0.36, 0.3, 1568, CHIME)],
  done: [note(0, 0.15, 784, CHIME), note(0.15, 0.15, 1047, CHIME), note(0.3, 0.4, 1568, CHIME)],
  refused: [note(0, 0.16, 150, ROUGH)],
}

/**
 * @param {number} at
 * @param {number} length
 * @param {number} hertz
 * @param {any} timbre
 * @param {number} [to]
 * @returns {Note}
 */
export function note(at, length, hertz, timbre, to = hertz) {
  return { at, length, hertz, to, timbre }
}
