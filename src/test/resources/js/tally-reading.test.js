import { compared } from "#js/tally/seeded.js"
import { checkedPair, dueFilters } from "#js/tally/opening.js"
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
  const sheet = { filters: [{ code: "M9S-346P" }], seeded: [{ code: "Q3D-25V7" }] }
  same(checkedPair(sheet, "m9s346p", ""), {})
  same(checkedPair(sheet, "m9s346p", "M9S-346P"), { code: "M9S-346P" })
  same(checkedPair(sheet, "M9S-346P", "Q3D-25V7").fault, "no-pair")
  same(checkedPair(sheet, "M9S-346Q", "").fault, "check")
  same(checkedPair(sheet, "KB6-CQ6M", "").fault, "unknown")
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
