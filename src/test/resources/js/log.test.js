import { openLog } from "#js/sync/log.js"
import { same, test } from "#test/check.js"

const deed = (sample) => ({ sample, at: "2026-05-11T06:00:00Z", person: "SC-1", deed: {} })
const numbers = async (log) => (await log.events()).map((event) => event.sequence)
let name = 0
const fresh = () => openLog("test-" + name++)

test("steps are numbered from 1 and kept in order", async () => {
  const log = await fresh()
  same(await log.append([deed("A")]), 1)
  same(await log.append([deed("B"), deed("C")]), 3)
  same(await numbers(log), [1, 2, 3])
  same((await log.events()).map((event) => event.sample), ["A", "B", "C"])
})

test("two pages on one phone never give a number twice", async () => {
  const [one, other] = [await openLog("shared"), await openLog("shared")]
  await Promise.all([1, 2, 3, 4].flatMap(() => [one.append([deed("A")]), other.append([deed("B")])]))
  same(await numbers(one), [1, 2, 3, 4, 5, 6, 7, 8])
  same(await one.device(), await other.device())
})

test("each site has a device name of its own, and keeps it", async () => {
  const log = await fresh()
  const device = await log.device()
  same(await (await openLog("test-" + (name - 1))).device(), device)
  same((await (await fresh()).device()) === device, false)
})

test("what cannot be written is told and nothing of it is kept", async () => {
  const log = await fresh()
  let told = ""
  await log.append([deed("A"), { ...deed("B"), deed: () => 1 }]).catch((fault) => {
    told = fault.name
  })
  same(told, "DataCloneError")
  same(await numbers(log), [])
})

test("how far the server has everything, and what is half answered, outlive the page", async () => {
  const log = await fresh()
  same([await log.upTo(), await log.session()], [0, {}])
  await log.setUpTo(7)
  await log.keepSession({ screen: "cut" })
  await log.keepRound({ round: { id: "2026-05-11-a" }, jars: [] })
  const again = await openLog("test-" + (name - 1))
  same([await again.upTo(), await again.session()], [7, { screen: "cut" }])
  same((await again.round("2026-05-11-a")).jars, [])
})

test("what was recorded about one sample is found by it", async () => {
  const log = await fresh()
  await log.append([deed("A"), deed("B"), deed("A")])
  same((await log.eventsOf("A")).map((event) => event.sequence), [1, 3])
})

test("a database of the first version gets the new places and keeps what is in it", async () => {
  const old = indexedDB.open("jarwise-first", 1)
  old.onupgradeneeded = () => {
    old.result.createObjectStore("events", { keyPath: "sequence" })
    old.result.createObjectStore("meta")
    old.result.createObjectStore("rounds", { keyPath: "round.id" })
  }
  await new Promise((resolve) => (old.onsuccess = resolve))
  const writing = old.result.transaction("events", "readwrite")
  writing.objectStore("events").add({ sequence: 1, ...deed("A") })
  await new Promise((resolve) => (writing.oncomplete = resolve))
  old.result.close()
  const log = await openLog("first")
  same((await log.eventsOf("A")).length, 1)
  await log.keepPhoto("aa", new Blob(["x"]))
  same(await log.photos(), ["aa"])
  await log.dropPhoto("aa")
  same(await log.photos(), [])
})
