import { compared } from "#js/tally/seeded.js"
import { filterOf } from "#js/tally/derived.js"
import { withOwn } from "#js/tally/known-here.js"
import { checkedPair, dueFilters, waitingUnder } from "#js/tally/opening.js"
import { adviceNow } from "#js/tally/stopping.js"
import { createGoTo } from "#js/tally/go-to.js"
import { snake, walkOf } from "#js/tally/grid.js"
import { finished, stateOf, timeAt, undoable, voucherKept } from "#js/tally/reading.js"
import { cases, same, test } from "#test/check.js"

const ROWS = [4, 6, 6, 8, 6, 6, 4]
const event = (sequence, deed, device = "phone-1") => ({ device, sequence, deed })
const press = (sequence, cell, stage = "adult") =>
  event(sequence, {
    deed: "counted",
    pest: "FRANOC",
    life_stage: stage,
    individuals: 1,
    filter_cell: cell,
  })
const done = (sequence, cell) => event(sequence, { deed: "cell_done", filter_cell: cell })

for (const { name, why, rows, passes, start, walk } of await cases("tally-walk")) {
  test(`walks ${name}`, () => same(walkOf(rows, passes, start), walk, why))
}

test("the round filter is walked as a snake", () => {
  const cells = snake(ROWS)
  same(cells.slice(0, 5), ["A3", "A4", "A5", "A6", "B7"])
  same(cells.at(-1), "G6")
  same(new Set(cells).size, 40)
})

test("the first cell that nobody looked at is the current one", () => {
  const state = stateOf([press(1, "A3"), done(2, "A3")], walkOf(ROWS, 1, 0))
  same([state.current, state.left, state.allRead, state.betweenPasses], ["A4", 39, false, false])
  same(state.then.slice(0, 2), ["A5", "A6"])
})

test("one may stop between two passes, not in the middle of one", () => {
  const walk = walkOf([2, 2], 2, 0)
  const states = [[], [done(1, "A1")], [done(1, "A1"), done(2, "B2")]]
  states.push([...states[2], done(3, "A2")])
  same(
    states.map((events) => stateOf(events, walk).betweenPasses),
    [false, false, true, false],
  )
  same(
    states.map((events) => stateOf(events, walk).passesDone),
    [0, 0, 1, 1],
  )
})

test("undo takes back one press after the other, across cells, and the end with its step", () => {
  const walk = walkOf([2, 2], 1, 0)
  const events = [press(1, "A1"), done(2, "A1"), press(3, "A2")]
  same(undoable(stateOf(events, walk), "phone-1").taken.sequence, 3)
  events.push(event(4, { deed: "voided", slip: { device: "phone-1", sequence: 3 } }))
  same(undoable(stateOf(events, walk), "phone-1").cell, "A1")
  const ends = finished(["FRANOC"], {}).map((deed, i) => event(5 + i, deed))
  same(
    undoable(stateOf([...events, ...ends], walk), "phone-1").slips.map((one) => one.sequence),
    [5, 6],
  )
  same(undoable(stateOf(events, walk), "phone-2"), undefined, "what others did stays")
})

test("a voucher has the next number and names the find it is of", () => {
  const state = stateOf([press(1, "A1")], walkOf([2, 2], 1, 0))
  same(voucherKept(state, "A1"), {
    deed: "voucher_kept",
    filter_cell: "A1",
    number: 1,
    press: { device: "phone-1", sequence: 1 },
  })
})

test("what was looked for always holds what is none of it", () => {
  same(finished(["FRANOC"], {})[0].pests, ["FRANOC", "other", "unsure"])
})

test("time away from the eyepieces is no reading time", () => {
  const at = (seconds) => ({ at: new Date(seconds * 1000).toISOString() })
  same(timeAt([at(0), at(10), at(500), at(530)]), 40_000)
})

test("lid and base must be a pair that is known here", () => {
  const sheet = { filters: [{ code: "M9S-346P" }], seeded: [{ code: "Q3D-25V7" }], read: [] }
  same(checkedPair(sheet, "m9s346p", ""), {})
  same(checkedPair(sheet, "m9s346p", "M9S-346P"), { code: "M9S-346P" })
  same(checkedPair(sheet, "M9S-346P", "Q3D-25V7").fault, "no-pair")
  same(checkedPair(sheet, "M9S-346Q", "").fault, "check")
  same(checkedPair(sheet, "KB6-CQ6M", "").fault, "unknown")
})

const jar = (code, more = {}) => ({ code, role: "crop", state: "frozen", events: [], ...more })
const read = (code) => jar(code, { state: "read", bench: "P1-B3", growingPoints: 10 })

test("a filter that is read is told so, unless it is a further wash or a recount", () => {
  const sheet = { filters: [], seeded: [], read: [read("M9S-346P")], pests: ["FRANOC"] }
  same(checkedPair(sheet, "M9S-346P", "M9S-346P").fault, "read")
  same(checkedPair(sheet, "M9S-346P", "M9S-346P", 2), { code: "M9S-346P" })
  same(checkedPair(sheet, "KB6-CQ6M", "", 2).fault, "unknown")
  const again = filterOf(sheet, "M9S-346P", { wash: 2 })
  same([again.code, again.register.repeat_of, again.pests], ["M9S-346P.w2", "M9S-346P", ["FRANOC"]])

  const recount = jar("M9S-346P.r1", { role: "recount", label: "M9S-346P", notBy: "SC-1" })
  const drawn = { ...sheet, filters: [recount] }
  same(checkedPair(drawn, "M9S-346P", "M9S-346P"), { code: "M9S-346P" })
  same(filterOf(drawn, "M9S-346P", { wash: 1 }), recount)
})

test("the first count comes before its recount", () => {
  const filters = [jar("A.r1", { label: "A" }), jar("A")]
  same(waitingUnder({ filters }, "A").code, "A")
  filters[1].state = "read"
  same(waitingUnder({ filters }, "A").code, "A.r1")
})

test("what was read on this device waits no longer, and moves the limits of its stand", () => {
  const stop = { detection: false, othersToRead: 1, groups: [{ pest: "FRANOC" }] }
  const at = (code, bench) => jar(code, { house: "P1", bench, stop })
  const sheet = { filters: [at("A", "B3"), at("B", "B3"), at("C", "B4")], read: [] }
  const own = finished(["FRANOC"], {}).map((deed, i) => ({ sequence: 1 + i, sample: "A", deed }))
  own.push({ sequence: 3, sample: "C", deed: { deed: "step", step: "freezer_out" } })
  const seen = withOwn(sheet, own, "phone-1")
  same(
    seen.filters.map(({ state }) => state),
    ["read", "frozen", "reading"],
  )
  same(
    seen.filters.map((one) => one.stop.groups.length),
    [0, 0, 1],
  )
  same(
    seen.read.map(({ code }) => code),
    ["A"],
  )
  own.push({
    sequence: 4,
    sample: "A",
    deed: { deed: "voided", slip: { device: "phone-1", sequence: 1 } },
  })
  same(withOwn(sheet, own, "phone-1").filters[0].state, "reading")
})

test("at the end of a pass the rest of the filter is judged, elsewhere not", () => {
  const walk = walkOf([2, 2], 2, 0)
  const sheet = { stages: { FRANOC: { adult: {} } }, stop: { minutesAllowed: 1 } }
  const events = [done(1, "A1"), done(2, "B2")]
  const counting = (stop) => ({
    filter: { stop },
    profiles: [{ pest: "FRANOC" }],
    own: () => [{ at: "2026-05-12T10:00:00Z" }],
    now: () => Date.parse("2026-05-12T10:05:00Z"),
  })
  same(adviceNow(sheet, counting(), stateOf(events.slice(1), walk)), null)
  const found = [press(3, "A1"), ...events]
  same(adviceNow(sheet, counting(), stateOf(found, walk)).reason, "minutes-used-up")
  const detection = adviceNow(sheet, counting({ detection: true }), stateOf(events, walk))
  same([detection.reason, detection.upTo > 0], [null, true])
  const limit = { pest: "FRANOC", group: "adult", stages: ["adult"], below: null, above: 1 }
  const told = adviceNow(sheet, counting({ groups: [limit] }), stateOf(found, walk))
  same([told.reason, told.verdict], ["decision-safe", "above"])
})

test("what dries out first is read first", () => {
  const now = Date.parse("2026-05-12T10:00:00Z")
  const filter = (code, state, earliestRead, readBy) => ({ code, state, earliestRead, readBy })
  const due = dueFilters(
    [
      filter("soon", "frozen", "2026-05-12T12:00:00Z", "2026-05-14T00:00:00Z"),
      filter("now", "frozen", "2026-05-12T08:00:00Z", "2026-05-13T00:00:00Z"),
      filter("late", "frozen", "2026-05-10T08:00:00Z", "2026-05-12T09:00:00Z"),
      filter("begun", "reading", "2026-05-12T08:00:00Z", "2026-05-13T00:00:00Z"),
      filter("cut", "cut"),
      filter("read", "read"),
    ],
    now,
  )
  same(
    due.map(({ code, when }) => [code, when].join()),
    ["late,late", "begun,begun", "now,now", "soon,soon", "cut,not-frozen"],
  )
})

test("a cell is gone to by row and column", () => {
  const goTo = createGoTo(snake(ROWS))
  goTo.begin()
  same(goTo.key("4"), { done: false })
  same(goTo.key("5"), { done: true, cell: "D5" })
  goTo.begin()
  goTo.key("1")
  same(goTo.key("1"), { done: true, fault: "A1" })
  goTo.begin()
  same(goTo.key("-"), { done: true })
})

test("what was found of what lay there is compared cell by cell", () => {
  const placed = [
    { cell: "A3", pest: "FRANOC", stage: "larva1" },
    { cell: "A3", pest: "FRANOC", stage: "larva1" },
    { cell: "A4", pest: "FRANOC", stage: "adult" },
  ]
  const state = stateOf(
    [press(1, "A3", "larva1"), press(2, "A4"), press(3, "A5")],
    walkOf(ROWS, 1, 0),
  )
  const { found, known, missed, wrong } = compared(placed, state.filter.cells)
  same([found, known], [2, 3])
  same(missed, [placed[1]])
  same(wrong, [{ cell: "A5", pest: "FRANOC", stage: "adult" }])
})
