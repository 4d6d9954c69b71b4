import { newDeviceName } from "#js/sync/device.js"
import { openLog } from "#js/sync/log.js"
import { nextBatch, queue, waitAfter } from "#js/sync/outbox.js"
import { same, test } from "#test/check.js"

const AT = "2026-05-11T06:00:00Z"
const deed = { sample: "A", at: AT, person: "SC-1", deed: {} }
const numbers = (events) => events.map((event) => event.sequence)
let name = 0

async function recorded(many) {
  const log = await openLog("outbox-" + name++)
  await log.append(Array.from({ length: many }, () => deed))
  return log
}

test("what the server has not answered for is sent again", async () => {
  same(numbers(await nextBatch(await recorded(3), 1)), [2, 3])
})

test("a server that lost events gets them once more", async () => {
  same(numbers(await nextBatch(await recorded(3), 0)), [1, 2, 3])
})

test("a long queue goes in batches, oldest first", async () => {
  const log = await recorded(250)
  same((await nextBatch(log, 0)).length, 100)
  same((await nextBatch(log, 100))[0].sequence, 101)
  same(await nextBatch(log, 250), [])
})

test("waits grow and stay below five minutes", () => {
  same([1, 2, 3, 8, 9, 1000].map(waitAfter), [2000, 4000, 8000, 256000, 300000, 300000])
})

test("what waits longer than a day is late", async () => {
  const day = 24 * 3600 * 1000
  const log = await recorded(2)
  same(await queue(log, Date.parse(AT) + day), { waiting: 2, late: false })
  same(await queue(log, Date.parse(AT) + day + 1), { waiting: 2, late: true })
  await log.setUpTo(2)
  same(await queue(log, Date.parse(AT) + 2 * day), { waiting: 0, late: false })
})

test("a device names itself with 32 random digits", () => {
  same(/^phone-[0-9a-f]{32}$/.test(newDeviceName()), true)
  same(newDeviceName() === newDeviceName(), false)
  same(newDeviceName((bytes) => bytes.fill(7)), "phone-" + "07".repeat(16))
})
