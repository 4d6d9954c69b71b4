import { sendPhotos } from "#js/tally/photos.js"
import { same, test } from "#test/check.js"

/** A log with photos a, b, c, and a server with these answers, one after the other. */
async function sent(...answers) {
  const asked = []
  const dropped = []
  const log = {
    photos: async () => ["a", "b", "c"],
    photo: async (hash) => "photo " + hash,
    dropPhoto: async (hash) => dropped.push(hash),
  }
  const fetched = globalThis.fetch
  globalThis.fetch = async (address) => {
    asked.push(address)
    const status = answers[asked.length - 1]
    if (!status) throw new TypeError("no connection")
    return { ok: status === 200, status }
  }
  try {
    await sendPhotos(log, "/lane/photos", "token")
  } finally {
    globalThis.fetch = fetched
  }
  return { asked, dropped }
}

test("a photo leaves the device after the server has it, not before", async () => {
  const { asked, dropped } = await sent(200, 200, 200)
  same(asked, ["/lane/photos/a", "/lane/photos/b", "/lane/photos/c"])
  same(dropped, ["a", "b", "c"])
})

test("a photo that is refused for good holds up no other", async () => {
  same((await sent(422, 413, 200)).dropped, ["c"])
})

test("without a server, or with an old token, all wait", async () => {
  same((await sent(200, 0)).dropped, ["a"])
  same((await sent(200, 0)).asked.length, 2)
  same((await sent(403)).asked.length, 1)
  same((await sent(503)).asked.length, 1)
})
