import { deskTime, withClock } from "#js/lib/clock.js"
import { counter, speaker } from "#js/lib/words.js"
import { closed } from "#js/walk/entry.js"
import { readCode, readLabel } from "#js/walk/label-code.js"
import { pairOf } from "#js/walk/pair.js"
import { lastStep, nextToCut, phaseOf, walked } from "#js/walk/flow.js"
import { arc, judge, point, target } from "#js/walk/timer.js"
import { json, same, test } from "#test/check.js"

const LIMITS = { shakeSecondsLeast: 40, shakeSecondsMost: 60 }

for (const { why, lid, base, washed, is } of await json("/testdata/walk/pairs.json")) {
  test(`lid and base: ${why}`, () => same(pairOf(lid, base, washed), is))
}

for (const { why, typed, code, fault } of await json("/testdata/walk/label-codes.json")) {
  test(`a code: ${why}`, () => same(readLabel(typed), code ? { code } : { fault }))
}

test("a code of another make is known where the round has it", () => {
  same(readCode(" j-07 ", ["J-07", "J-08"]), { code: "J-07" })
  same(readCode("J-09", ["J-07", "J-08"]), { fault: "length" })
})

test("a shake is judged by the site's protocol, its ends included", () => {
  const said = [0, 39, 40, 45, 60, 61].map((seconds) => judge(seconds, LIMITS))
  same(said, ["short", "short", "to-protocol", "to-protocol", "to-protocol", "long"])
  same(target(LIMITS), 45)
})

test("the dial is a clock of a minute", () => {
  same([point(0, 100), point(15, 100), point(30, 100)], [[0, -100], [100, 0], [0, 100]])
  same(arc(0, 15, 100), "M0 -100A100 100 0 0 1 100 0")
  same(arc(0, 45, 100), "M0 -100A100 100 0 1 1 -100 0")
  same(arc(0, 75, 100), arc(0, 60, 100))
})

test("a phone whose clock runs ahead of the desk's opens no bench the sooner", () => {
  const [desk, phone] = ["2026-05-11T06:00:00Z", "2026-05-11T09:10:00Z"].map(Date.parse)
  const sheet = withClock({ time: "2026-05-11T06:00:00Z" }, phone)
  same(deskTime(sheet, phone), desk)
  same(deskTime(sheet, phone + 90_000), desk + 90_000)
  same(deskTime(withClock({}, phone), phone), phone, "an older desk, which tells no time:")
  same(deskTime({}, phone), phone, "a round kept before:")
})

test("nobody enters before the longest interval ends, nor where its end is unknown", () => {
  const place = { house: "P1", bench: "P1-B3" }
  const noEntry = (until, benches = [], house = "P1") => ({ house, benches, until })
  const now = Date.parse("2026-05-11T06:00:00Z")
  const [early, late] = ["2026-05-11T07:00:00Z", "2026-05-11T19:10:00Z"]
  same(closed([noEntry(early), noEntry(late)], place, now).until, late)
  same(closed([noEntry(early), noEntry(null)], place, now).until, null)
  same(closed([noEntry(late, ["P1-B4"]), noEntry(late, [], "P2")], place, now), null)
  same(closed([noEntry(late, ["P1-B3"])], place, now).until, late)
  same(closed([noEntry("2026-05-11T06:00:00Z")], place, now), null)
})

test("sentences are filled in as the server does", () => {
  const say = speaker({ "a.one": "{0} step", "a.many": "{0} steps of {1}", q: "don't {9}" })
  same([counter(say)("a.", 1), counter(say)("a.", 3, "J-1")], ["1 step", "3 steps of J-1"])
  same(say("q"), "don't {9}")
})

const JARS = ["A", "B", "C"].map((code, i) => ({
  code,
  role: i < 2 ? "crop" : "blank",
  events: [],
}))
const step = (sequence, sample, step) => ({
  device: "phone-1",
  sequence,
  sample,
  deed: { deed: "step", step, facts: {} },
})
const slip = (sequence, sample, of) => ({
  ...step(sequence, sample),
  deed: { deed: "voided", slip: { device: "phone-1", sequence: of } },
})

test("a jar put off comes again at the end", () => {
  same(nextToCut(walked(JARS, []), []).code, "A")
  same(nextToCut(walked(JARS, []), ["A"]).code, "B")
  same(nextToCut(walked(JARS, []), ["B", "A"]).code, "B")
  same(nextToCut(walked(JARS, [step(1, "A", "cut"), step(2, "B", "cut")]), ["A"]), undefined)
})

test("a blank is not cut but washed, and the parts of the day follow each other", () => {
  const cut = [step(1, "A", "cut"), step(2, "B", "lost")]
  const washed = [...cut, step(3, "A", "washed"), step(4, "C", "washed")]
  const frozen = [...washed, step(5, "A", "freezer_in"), step(6, "C", "freezer_in")]
  const phases = [[], cut, washed, frozen].map((events) => phaseOf(walked(JARS, events)))
  same(phases, ["walk", "wash", "freezer", "done"])
})

test("the last step that stands is the one to take back", () => {
  const own = [step(1, "A", "cut"), step(2, "B", "cut"), slip(3, "B", 2)]
  same(lastStep(own).sample, "A")
  same(lastStep([...own, slip(4, "A", 1)]), undefined)
})
