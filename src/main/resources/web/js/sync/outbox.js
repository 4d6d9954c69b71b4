// What is not sent yet. The server answers with the number up to which it has everything; nothing
// beyond that counts as sent, so a lost batch or a lost answer is simply sent again.

/** @typedef {{ sequence: number, at: string }} Recorded */

const DAY = 24 * 3600 * 1000
const LONGEST_WAIT = 5 * 60 * 1000

/**
 * @template {Recorded} E
 * @param {E[]} events everything the device recorded
 * @param {number} upTo number up to which the server has everything
 * @returns {E[]} what the server may lack, oldest number first
 */
export function unsent(events, upTo) {
  return events
    .filter((event) => event.sequence > upTo)
    .sort((one, other) => one.sequence - other.sequence)
}

/**
 * @template {Recorded} E
 * @param {E[]} events
 * @param {number} upTo
 * @param {number} [most]
 * @returns {E[]} what to send next
 */
export function nextBatch(events, upTo, most = 100) {
  return unsent(events, upTo).slice(0, most)
}

/**
 * @param {number} failures in a row, 1 or more
 * @returns {number} milliseconds to wait: 2 s, 4 s, 8 s … 5 min
 */
export function waitAfter(failures) {
  return Math.min(LONGEST_WAIT, 1000 * 2 ** Math.min(failures, 20))
}

/**
 * @param {Recorded[]} events
 * @param {number} upTo
 * @param {number} now milliseconds
 * @returns {{ waiting: number, late: boolean }} late: something waits for more than a day
 */
export function queue(events, upTo, now) {
  const waiting = unsent(events, upTo)
  const late = waiting.some((event) => now - Date.parse(event.at) > DAY)
  return { waiting: waiting.length, late }
}
