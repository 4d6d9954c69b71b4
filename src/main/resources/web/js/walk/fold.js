// Folds the steps of one jar. Order and repeats make no difference. The server does the same in
// SampleFold.java; testdata/walk/fold/*.json holds both to it.

/**
 * @typedef {{ device: string, sequence: number }} EventId
 * @typedef {{ deed: string, step?: string, facts?: Record<string, string>, slip?: EventId,
 *   done?: EventId, replaces?: EventId, reason?: string }} Deed
 * @typedef {EventId & { sample: string, at: string, person: string, deed: Deed }} StepEvent
 * @typedef {{ state: string, facts: Record<string, string>, records: Record<string, StepEvent>,
 *   questions: string[] }} Jar
 */

/** Steps in the order in which their facts are laid over each other. */
const STEPS = ["registered", "cut", "washed", "freezer_in", "freezer_out", "read"]
const ENDS = ["lost", "spilled", "discarded"]

/**
 * @param {Iterable<StepEvent>} events of one jar, in any order, repeats allowed
 * @returns {Jar}
 */
export function foldJar(events) {
  const distinct = [...new Map([...events].map((event) => [keyOf(event), event])).values()]
  const slips = slipsOf(distinct)
  const standing = distinct.filter((event) => !slips.has(keyOf(event))).sort(byIdentity)
  /** @type {Jar} */
  const jar = { state: "planned", facts: {}, records: {}, questions: [] }
  for (const step of [...STEPS, ...ENDS]) {
    const records = standing.filter(({ deed }) => deed.deed === "step" && deed.step === step)
    if (records.length === 0) continue
    jar.records[step] = records[0]
    Object.assign(jar.facts, records[0].deed.facts)
    if (new Set(records.map(factsText)).size > 1) jar.questions.push(step)
  }
  jar.state = stateOf(jar.records)
  return jar
}

/**
 * @param {StepEvent[]} events
 * @returns {Set<string>} events taken back, and steps that a later one replaces
 */
export function slipsOf(events) {
  const voided = new Set()
  for (const { deed } of events) {
    const slip = deed.deed === "voided" ? deed.slip : deed.deed === "reopened" ? deed.done : null
    if (slip) voided.add(keyOf(slip))
  }
  const slips = new Set(voided)
  for (const event of events) {
    // A correction that was itself taken back replaces nothing.
    if (event.deed.replaces && !voided.has(keyOf(event))) slips.add(keyOf(event.deed.replaces))
  }
  return slips
}

/** @param {EventId} id */
export const keyOf = ({ device, sequence }) => `${device}/${sequence}`

/** @param {Record<string, StepEvent>} records */
function stateOf(records) {
  const end = ["discarded", "lost", "spilled"].find((step) => records[step])
  if (end) return end
  if (records.freezer_in) return "frozen"
  if (records.washed) return "washed"
  return records.cut ? "cut" : "planned"
}

/**
 * @param {StepEvent} one
 * @param {StepEvent} other
 */
function byIdentity(one, other) {
  if (one.device !== other.device) return one.device < other.device ? -1 : 1
  return one.sequence - other.sequence
}

/** @param {StepEvent} event */
const factsText = (event) => JSON.stringify(Object.entries(event.deed.facts ?? {}).sort())
