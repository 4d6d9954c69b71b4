// Sends what waits: on opening, when the network is back, when the page is looked at again, and
// with growing waits in between.

import { exchange } from "#js/sync/exchange.js"
import { nextBatch, waitAfter } from "#js/sync/outbox.js"

/**
 * @typedef {import("#js/sync/outbox.js").Waiting & {
 *   device(): Promise<string>, setUpTo(upTo: number): Promise<void> }} Log
 * @typedef {{ address: string, token: () => string, renew: () => Promise<boolean>,
 *   told: (answer: import("#js/sync/exchange.js").Answer) => unknown }} Line
 */

/**
 * @param {Log} log
 * @param {Line} line where to, and who hears how it went
 * @returns {{ send: () => Promise<void> }}
 */
export function startSending(log, line) {
  let failures = 0
  let running = false
  let again = false
  let timer = 0

  async function send() {
    if (running) {
      again = true
      return
    }
    running = true
    clearTimeout(timer)
    do {
      again = false
      failures = (await sendAll(log, line)) ? 0 : failures + 1
      // Asked again while it failed: the network may have come back in between.
    } while (again)
    running = false
    if (failures > 0) timer = setTimeout(send, waitAfter(failures))
  }

  addEventListener("online", send)
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") send()
  })
  return { send }
}

/**
 * @param {Log} log
 * @param {Line} line
 * @returns {Promise<boolean>} whether everything arrived
 */
async function sendAll(log, line) {
  let renewed = false
  for (;;) {
    const upTo = await log.upTo()
    const events = await nextBatch(log, upTo)
    const device = await log.device()
    const answer = await exchange(line.address, line.token(), { device, events })
    if (answer.kind === "page-too-old" && !renewed) {
      renewed = true
      if (await line.renew()) continue
    }
    // The answer counts even when it is lower: an older copy of the data may have been put back.
    if (answer.kind === "taken") await log.setUpTo(answer.upTo)
    await line.told(answer)
    if (answer.kind !== "taken") return false
    if ((await log.countAfter(answer.upTo)) === 0) return true
    if (answer.upTo <= upTo && events.length > 0) return false
  }
}
