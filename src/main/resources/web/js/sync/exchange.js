// One POST: events out, how far they arrived back.

/**
 * @typedef {{ kind: "taken", upTo: number }
 *   | { kind: "refused", sentence: string }
 *   | { kind: "page-too-old" }
 *   | { kind: "unreachable" }} Answer
 */

const LONGEST_ANSWER = 20_000

/**
 * @param {string} address
 * @param {string} token of the page
 * @param {{ device: string, events: object[] }} batch
 * @param {typeof fetch} [send]
 * @returns {Promise<Answer>}
 */
export async function exchange(address, token, batch, send = (url, init) => fetch(url, init)) {
  try {
    const answer = await send(address, {
      method: "POST",
      headers: { "Content-Type": "application/json", "Jarwise-Form": token },
      body: JSON.stringify(batch),
      signal: AbortSignal.timeout(LONGEST_ANSWER),
    })
    return await understood(answer)
  } catch (failure) {
    console.info("Not sent", failure)
    return { kind: "unreachable" }
  }
}

/**
 * @param {Response} answer
 * @returns {Promise<Answer>}
 */
async function understood(answer) {
  if (answer.status === 403) return { kind: "page-too-old" }
  const isJson = (answer.headers.get("Content-Type") ?? "").includes("json")
  if (!isJson) return { kind: "unreachable" }
  const said = await answer.json()
  if (answer.ok && Number.isInteger(said.upTo)) return { kind: "taken", upTo: said.upTo }
  return typeof said.refused === "string"
    ? { kind: "refused", sentence: said.refused }
    : { kind: "unreachable" }
}
