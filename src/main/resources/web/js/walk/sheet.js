// The round with its places, limits and words: asked of the server, kept on the phone.

import { withClock } from "#js/lib/clock.js"

/**
 * @param {string} address
 * @param {{ keepRound(round: object): Promise<void> }} log
 * @returns {Promise<any | undefined>} undefined where the server cannot be reached
 */
export async function fetchSheet(address, log) {
  try {
    const answer = await fetch(address, { signal: AbortSignal.timeout(8000) })
    if (!answer.ok) return undefined
    const sheet = withClock(await answer.json())
    await log.keepRound(sheet)
    return sheet
  } catch (failure) {
    console.info("The round as it was last kept here", failure)
    return undefined
  }
}
