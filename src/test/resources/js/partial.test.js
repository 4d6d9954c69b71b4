import { normalAbove, normalQuantileAbove } from "#js/tally/normal.js"
import { partialReading } from "#js/tally/partial.js"
import { advice, likelyVerdict } from "#js/tally/stop.js"
import { cases, same, test } from "#test/check.js"

const NEAR = 1e-9

function close(actual, expected, what) {
  const off = Math.abs(actual - expected) / Math.max(1, Math.abs(expected))
  if (!(off <= NEAR)) throw new Error(`${what} is ${actual}; it must be ${expected}`)
}

for (const { name, counts, cells, relativeStandardError, ...expected } of await cases(
  "partial/reading",
)) {
  test(`reads a part: ${name}`, () => {
    const reading = partialReading(counts, cells)
    close(reading.estimate, expected.estimate, "estimate")
    close(reading.lower(0.95), expected.lower95, "lower")
    close(reading.upper(0.95), expected.upper95, "upper")
    close(reading.upperOneSided(0.95), expected.upperOneSided95, "upper, one-sided")
    if (relativeStandardError === null) same(reading.found, 0)
    else close(reading.relativeStandardError, relativeStandardError, "relative standard error")
  })
}

/** The state of a filter with one group, as a file of the folder tells it. */
const stateOf = ({ counts, cells, belowFrom, below, above, ...rest }) => ({
  ...rest,
  passesDone: 1,
  cellsRead: counts.length,
  cellsTotal: cells,
  perGroup: [{ pest: "FRANOC", group: "larva", counts }],
  limits: [{ pest: "FRANOC", group: "larva", belowFrom, below, above }],
})

for (const { name, why, reason, verdict, chanceOfOtherVerdict, ...given } of await cases(
  "partial/stop",
)) {
  test(`stops or not: ${name}`, () => {
    const said = advice(stateOf(given))
    same(said.reason, reason, why)
    same(said.verdict, verdict, why)
    const likely = likelyVerdict(partialReading(given.counts, given.cells), given)
    same(likely.verdict, verdict, why)
    close(said.chanceOfOtherVerdict, chanceOfOtherVerdict, "chance of another verdict")
    close(likely.chanceOfOther, chanceOfOtherVerdict, "chance of another verdict")
  })
}

test("the normal distribution and its quantiles, digit by digit", () => {
  // own arithmetic in 30 digits
  close(normalAbove(0), 0.5, "0")
  close(normalAbove(1), 0.158655253931457, "1")
  close(normalAbove(-1.96), 0.975002104851780, "-1.96")
  close(normalAbove(3) * 1e3, 1.34989803163009, "3")
  close(normalAbove(5) * 1e7, 2.86651571879194, "5")
  close(normalQuantileAbove(0.025), 1.95996398454005, "0.025")
  close(normalQuantileAbove(0.5), 0, "0.5")
  close(normalQuantileAbove(0.95), -1.64485362695147, "0.95")
  close(normalQuantileAbove(1e-6), 4.75342430882290, "1e-6")
})

test("quantiles and chances undo each other", () => {
  for (let z = -8; z <= 8; z += 0.37) {
    const upper = Math.abs(z)
    close(normalQuantileAbove(normalAbove(upper)), upper, `quantile at ${upper}`)
    close(normalAbove(z) + normalAbove(-z), 1, `both sides of ${z}`)
  }
})

test("chances of a part add up and rise", () => {
  for (const [counts, cells] of [[[0, 0, 3, 1], 9], [[0], 400], [[90, 0, 0, 1], 16]]) {
    const { found, atMost } = partialReading(counts, cells)
    same(atMost(found - 1), 0)
    let last = 0
    for (let n = found; n < found + 300; n++) {
      if (!(atMost(n) >= last && atMost(n) <= 1)) throw new Error(`falls at ${n}`)
      last = atMost(n)
    }
    close(atMost(10_000_000), 1, "everything")
  }
})

const LARVAE = { pest: "FRANOC", group: "larva" }
const ADULTS = { pest: "FRANOC", group: "adult" }
const TEN = (each) => Array(10).fill(each)
const filter = (changes) => ({
  detection: false,
  passesDone: 1,
  cellsRead: 10,
  cellsTotal: 40,
  perGroup: [
    { ...ADULTS, counts: TEN(0) },
    { ...LARVAE, counts: TEN(3) },
  ],
  limits: [{ ...LARVAE, below: 20, above: 60 }],
  minutes: 5,
  ...changes,
})
const told = ({ reason, group }) => [reason, group]

test("every group with limits must be safe, and the most urgent is told", () => {
  const safe = { ...ADULTS, below: 30, above: 90 }
  same(told(advice(filter({}))), ["decision-safe", "larva"])
  same(told(advice(filter({ limits: [safe, filter({}).limits[0]] }))), ["decision-safe", "larva"])
  const open = { ...ADULTS, below: 3, above: 90 }
  same(told(advice(filter({ limits: [open, filter({}).limits[0]] }))), [null, "adult"])
  const unknown = { pest: "TETRUR", group: "motile", below: 30, above: 90 }
  same(told(advice(filter({ limits: [unknown, filter({}).limits[0]] }))), [null, "larva"])
  same(told(advice(filter({ limits: [] }))), [null, "larva"])
})

test("precision is asked of what was found, and of all of it", () => {
  const wish = { limits: [], wantedRelativeError: 0.2 }
  same(told(advice(filter(wish))), ["precision-reached", "larva"])
  const few = { ...ADULTS, counts: [1, 0, 1, 0, 0, 0, 0, 0, 0, 0] }
  const both = [few, { ...LARVAE, counts: TEN(3) }]
  same(advice(filter({ ...wish, perGroup: both })).reason, null)
  same(advice(filter({ ...wish, perGroup: [{ ...ADULTS, counts: TEN(0) }] })).reason, null)
})

test("a round of detection goes on while any of its groups was not found", () => {
  const said = advice(filter({ detection: true, minutes: 90, minutesAllowed: 20 }))
  same(told(said), [null, "adult"])
  same([said.upTo, said.range], [10, { lower: 0, upper: 12 }])
  const larvae = filter({ detection: true, perGroup: [filter({}).perGroup[1]] })
  same(told(advice(larvae)), ["decision-safe", "larva"])
})

test("before the first pass is done there is nothing to say", () => {
  same(advice(filter({ passesDone: 0, minutes: 90, minutesAllowed: 20 })), { reason: null })
  same(advice(filter({ perGroup: [] })), { reason: null })
  same(advice(filter({ perGroup: [{ ...LARVAE, counts: [] }] })), { reason: null })
  same(advice(filter({ passesDone: undefined })).reason, "decision-safe")
  const allObscured = { passesDone: 0, cellsRead: 0, cellsTotal: 0, perGroup: [] }
  same(advice(filter(allObscured)), { reason: "every-cell-read" })
})
