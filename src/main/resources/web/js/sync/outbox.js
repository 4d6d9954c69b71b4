// What is not sent yet. The server answers with the number up to which it has everything; nothing
// beyond that counts as sent, so a lost batch or a lost answer is simply sent again.

/** @typedef {{ sequence: number, at: string }} Recorded */
/**
 * @typedef {{ upTo(): Promise<number>, countAfter(upTo: number): Promise<number>,
 *   eventsAfter(upTo: number, most: number): Promise<any[]> }} Waiting the log's side of it
 */

const DAY = 24 * 3600 * 1000
const LONGEST_WAIT = 5 * 60 * 1000
const BATCH = 100

/**
 * @param {Waiting} log
 * @param {number} upTo number up to which the server has everything
 * @returns {Promise<Recorded[]>} what to send next, oldest number first
 */
export const nextBatch = (log, upTo) => log.eventsAfter(upTo, BATCH)

/**
 * @param {number} failures in a row, 1 or more
 * @returns {number} milliseconds to wait: 2 s, 4 s, 8 s … 5 min
 */
export function waitAfter(failures) {
  return Math.min(LONGEST_WAIT, 1000 * 2 ** Math.min(failures, 20))
}

/**
 * @param {Waiting} log
 * @param {number} now milliseconds
 * @returns {Promise<{ waiting: number, late: boolean }>} late: something waits for more than a day
 */
export async function queue(log, now) {
  const upTo = await log.upTo()
  const [oldest] = await log.eventsAfter(upTo, 1)
  const waiting = oldest ? await log.countAfter(upTo) : 0
  return { waiting, late: oldest !== undefined && now - Date.parse(oldest.at) > DAY }
}
