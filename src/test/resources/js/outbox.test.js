import { newDeviceName } from "#js/sync/device.js"
import { nextBatch, queue, unsent, waitAfter } from "#js/sync/outbox.js"
import { same, test } from "#test/check.js"

const AT = "2026-05-11T06:00:00Z"
const recorded = (...numbers) => numbers.map((sequence) => ({ sequence, at: AT }))
const numbers = (events) => events.map((event) => event.sequence)

test("what the server has not answered for is sent again", () => {
  same(numbers(unsent(recorded(3, 1, 2), 1)), [2, 3])
})

test("a server that lost events gets them once more", () => {
  same(numbers(unsent(recorded(1, 2, 3), 0)), [1, 2, 3])
})

test("a long queue goes in batches, oldest first", () => {
  const many = recorded(...Array.from({ length: 250 }, (_, i) => 250 - i))
  same(nextBatch(many, 0).length, 100)
  same(nextBatch(many, 100)[0].sequence, 101)
  same(nextBatch(many, 250), [])
})

test("waits grow and stay below five minutes", () => {
  same([1, 2, 3, 8, 9, 1000].map(waitAfter), [2000, 4000, 8000, 256000, 300000, 300000])
})

test("what waits longer than a day is late", () => {
  const day = 24 * 3600 * 1000
  same(queue(recorded(1, 2), 0, Date.parse(AT) + day), { waiting: 2, late: false })
  same(queue(recorded(1, 2), 0, Date.parse(AT) + day + 1), { waiting: 2, late: true })
  same(queue(recorded(1, 2), 2, Date.parse(AT) + 2 * day), { waiting: 0, late: false })
})

test("a device names itself with 32 random digits", () => {
  same(/^phone-[0-9a-f]{32}$/.test(newDeviceName()), true)
  same(newDeviceName() === newDeviceName(), false)
  same(newDeviceName((bytes) => bytes.fill(7)), "phone-" + "07".repeat(16))
})
