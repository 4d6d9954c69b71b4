// May the reader stop before the whole filter is read? The server judges the same in StopRules.java
// and FilterLimits.java; testdata/partial/stop/*.json holds both to it. See docs/methods.md.

import { partialReading } from "#js/tally/partial.js"

/**
 * @typedef {"below" | "cannot-tell" | "above"} Verdict
 * @typedef {{ pest: string, group: string, below: number | null, above: number | null,
 *   belowFrom?: number }} Limit the verdict of the round is below the line with `belowFrom` (mostly
 *   0) to `below` on this filter, above it with so many or more; null: with no number
 * @typedef {{ pest: string, group: string, counts: number[] }} GroupCounts individuals in each cell
 *   read in completed passes; zeros where none was found
 * @typedef {{ pest: string, group: string, verdict?: Verdict, chanceOfOtherVerdict?: number,
 *   range: { lower: number, upper: number }, upTo?: number }} Told of one group: what the whole
 *   filter may hold (95 %); `upTo`, where none was found: what the rest still holds at most (95 %)
 * @typedef {null | "every-cell-read" | "decision-safe" | "precision-reached" | "minutes-used-up"
 * } Reason
 * @typedef {{ reason: Reason } & Partial<Told>} Advice
 * @typedef {{ detection: boolean, passesDone?: number, cellsRead: number, cellsTotal: number,
 *   perGroup: GroupCounts[], limits: Limit[], wantedRelativeError?: number | null,
 *   minutes: number, minutesAllowed?: number | null, othersToRead?: number }} State
 *   `perGroup`: the groups that the round is about; `othersToRead`: filters of the same stand and
 *   round that wait, with which a verdict may still come
 * @typedef {GroupCounts & { reading: import("#js/tally/partial.js").PartialReading,
 *   likely: { verdict: Verdict, chanceOfOther: number } | null }} Known
 */

const SAFE_BELOW = 0.05
const URGENCY = ["below", "cannot-tell", "above"]

/**
 * The first reason that holds, in this order; none on an empty part when detection is the purpose.
 * A decision is safe if it is for every group with limits; precision is asked of groups found.
 *
 * @param {State} state at the end of a pass
 * @returns {Advice} with the group that the reason hangs on
 */
export function advice(state) {
  const isAsked = (state.passesDone ?? 1) > 0
  const groups = isAsked ? state.perGroup.flatMap((one) => known(one, state)) : []
  if (state.cellsRead >= state.cellsTotal) return told("every-cell-read", urgent(groups))
  if (groups.length === 0) return { reason: null }
  const empty = groups.find(({ reading }) => reading.found === 0)
  if (state.detection && empty) return told(null, empty)
  if (isDecided(groups, state)) return told("decision-safe", urgent(groups))
  const found = groups.filter(({ reading }) => reading.found > 0)
  const coarsest = most(found, ({ reading }) => [reading.relativeStandardError])
  if (coarsest && coarsest.reading.relativeStandardError <= (state.wantedRelativeError ?? 0)) {
    return told("precision-reached", coarsest)
  }
  const isOver = state.minutes >= (state.minutesAllowed ?? Infinity)
  return told(isOver ? "minutes-used-up" : null, doubtful(groups))
}

/**
 * @param {GroupCounts} one @param {State} state
 * @returns {Known[]} none where no cell was read
 */
function known(one, { cellsTotal, limits }) {
  if (one.counts.length === 0) return []
  const reading = partialReading(one.counts, cellsTotal)
  const limit = limits.find((other) => isSame(one, other))
  return [{ ...one, reading, likely: limit ? likelyVerdict(reading, limit) : null }]
}

/**
 * The verdict that the round most likely has once this filter is read whole.
 *
 * @param {import("#js/tally/partial.js").PartialReading} reading
 * @param {Pick<Limit, "below" | "above" | "belowFrom">} limit
 * @returns {{ verdict: Verdict, chanceOfOther: number }}
 */
export function likelyVerdict(reading, { belowFrom = 0, below, above }) {
  const isBelow = below === null ? 0 : reading.atMost(below) - reading.atMost(belowFrom - 1)
  const isNotAbove = above === null ? 1 : reading.atMost(above - 1)
  /** @type {[Verdict, number][]} */
  const others = [
    ["below", 1 - isBelow],
    ["cannot-tell", isBelow + (1 - isNotAbove)],
    ["above", isNotAbove],
  ]
  const [verdict, chanceOfOther] = others.reduce((a, b) => (b[1] < a[1] ? b : a))
  return { verdict, chanceOfOther }
}

/**
 * "Cannot tell" is no decision while filters wait that could, or where no number would.
 *
 * @param {Known[]} groups
 * @param {State} state
 */
function isDecided(groups, { limits, othersToRead = 0 }) {
  const isSafe = (/** @type {Limit} */ limit) => {
    const likely = groups.find((one) => isSame(one, limit))?.likely
    return (
      likely != null &&
      likely.chanceOfOther < SAFE_BELOW &&
      (limit.below !== null || limit.above !== null) &&
      (likely.verdict !== "cannot-tell" || othersToRead === 0)
    )
  }
  return limits.length > 0 && limits.every(isSafe)
}

/** @param {Known[]} groups */
const doubtful = (groups) =>
  most(groups, ({ likely, reading }) => [likely?.chanceOfOther ?? -1, reading.found])

/** @param {Known[]} groups */
const urgent = (groups) =>
  most(groups, ({ likely, reading }) => [
    likely ? URGENCY.indexOf(likely.verdict) : -1,
    likely?.chanceOfOther ?? 0,
    reading.found,
  ])

/**
 * @param {Known[]} groups
 * @param {(group: Known) => number[]} by first number first
 * @returns {Known | undefined} the first of those with the most
 */
function most(groups, by) {
  const larger = (/** @type {Known} */ a, /** @type {Known} */ b) => {
    const [x, y] = [by(a), by(b)]
    const i = x.findIndex((value, at) => value !== y[at])
    return i >= 0 && y[i] > x[i] ? b : a
  }
  return groups.length === 0 ? undefined : groups.reduce(larger)
}

/**
 * @param {Reason} reason
 * @param {Known | undefined} about
 * @returns {Advice}
 */
function told(reason, about) {
  if (!about) return { reason }
  const { pest, group, reading, likely } = about
  return {
    reason,
    pest,
    group,
    ...(likely && { verdict: likely.verdict, chanceOfOtherVerdict: likely.chanceOfOther }),
    range: { lower: reading.lower(0.95), upper: reading.upper(0.95) },
    ...(reading.found === 0 && { upTo: reading.upperOneSided(0.95) }),
  }
}

/** @param {{ pest: string, group: string }} a @param {{ pest: string, group: string }} b */
const isSame = (a, b) => a.pest === b.pest && a.group === b.group
