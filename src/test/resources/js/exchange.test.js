import { exchange } from "#js/sync/exchange.js"
import { same, test } from "#test/check.js"

const BATCH = { device: "phone-1", events: [{ sequence: 1 }] }
const answering = (status, body, type = "application/json") => async () =>
  new Response(body, { status, headers: { "Content-Type": type } })
const answered = (...answer) => exchange("/n/events", "t", BATCH, answering(...answer))

test("the token goes in the header and the batch in the body", async () => {
  let asked
  await exchange("/lane/events", "secret", BATCH, async (url, init) => {
    asked = { url, token: init.headers["Jarwise-Form"], body: init.body, method: init.method }
    return new Response("{}")
  })
  same(asked, {
    url: "/lane/events",
    token: "secret",
    method: "POST",
    body: '{"device":"phone-1","events":[{"sequence":1}]}',
  })
})

test("an answer says how far everything arrived", async () => {
  same(await answered(200, '{"upTo":4}'), { kind: "taken", upTo: 4 })
})

test("a refusal is passed on in the server's words", async () => {
  same(await answered(422, '{"refused":"No."}'), { kind: "refused", sentence: "No." })
})

test("a page with an old token asks for a new one", async () => {
  same(await answered(403, "<html>", "text/html"), { kind: "page-too-old" })
})

test("an answer of something in between is no answer", async () => {
  same(await answered(200, "<html>sign in</html>", "text/html"), { kind: "unreachable" })
  same(await answered(502, "{}"), { kind: "unreachable" })
  same(await answered(200, '{"upTo":'), { kind: "unreachable" })
  same(await answered(200, '{"upTo":"4"}'), { kind: "unreachable" })
})

test("no network is no failure of the page", async () => {
  const broken = async () => {
    throw new TypeError("Failed to fetch")
  }
  same(await exchange("/n/events", "t", BATCH, broken), { kind: "unreachable" })
})
