import { isFree, letterOf } from "#js/tally/key-codes.js"
import { createKeys, HOLD } from "#js/tally/keys.js"
import { same, test } from "#test/check.js"

const at = (keys, code, time, repeat = false) => keys.down({ code, at: time, repeat })
const kind = (meaning) => [meaning.kind, meaning.why ?? meaning.key]

test("a key of the keypad is known by its place, whatever it types", () => {
  const keys = createKeys()
  same(kind(at(keys, "Numpad4", 0)), ["press", "4"])
  same(kind(at(keys, "NumpadDecimal", 100)), ["press", "."])
  same(kind(at(keys, "NumpadComma", 200)), ["press", "."])
})

test("the same key within 60 ms is a bounce, at 60 ms a press", () => {
  const keys = createKeys()
  at(keys, "Numpad4", 0)
  same(kind(at(keys, "Numpad4", 59)), ["refused", "bounce"])
  same(kind(at(keys, "Numpad4", 60)), ["press", "4"])
})

test("a key that chatters when it is let go counts once", () => {
  const keys = createKeys()
  at(keys, "Numpad4", 0)
  keys.up({ code: "Numpad4", at: 200 })
  same(kind(at(keys, "Numpad4", 210)), ["refused", "bounce"])
  same(kind(at(keys, "Numpad4", 300)), ["press", "4"])
})

test("of two keys within 40 ms the first stands, at 40 ms both do", () => {
  const keys = createKeys()
  same(kind(at(keys, "Numpad4", 0)), ["press", "4"])
  same(kind(at(keys, "Numpad5", 39)), ["refused", "two-at-once"])
  same(kind(at(keys, "Numpad6", 40)), ["press", "6"])
})

test("a key that repeats by itself is refused once, not thirty times", () => {
  const keys = createKeys()
  at(keys, "Numpad4", 0)
  same(kind(at(keys, "Numpad4", 500, true)), ["refused", "repeat"])
  same(at(keys, "Numpad4", 533, true).kind, "nothing")
  keys.up({ code: "Numpad4", at: 600 })
  at(keys, "Numpad4", 700)
  same(kind(at(keys, "Numpad4", 1200, true)), ["refused", "repeat"])
})

test("Enter means something only when it is held", () => {
  const keys = createKeys()
  same(kind(at(keys, "NumpadEnter", 0)), ["waiting", "Enter"])
  same(kind(keys.up({ code: "NumpadEnter", at: HOLD - 1 })), ["early", "Enter"])
  at(keys, "NumpadEnter", 2000)
  same(keys.due(2000 + HOLD - 1).kind, "nothing")
  same(kind(keys.due(2000 + HOLD)), ["hold", "Enter"])
  same(keys.up({ code: "NumpadEnter", at: 3000 }).kind, "nothing", "told once")
})

test("a slash let go early is the pest before, held it goes to a cell", () => {
  const keys = createKeys()
  at(keys, "NumpadDivide", 0)
  same(kind(keys.up({ code: "NumpadDivide", at: 100 })), ["press", "/"])
  at(keys, "NumpadDivide", 1000)
  same(kind(keys.up({ code: "NumpadDivide", at: 1000 + HOLD })), ["hold", "/"])
})

test("a key held while the window loses the keyboard is not held for ever", () => {
  const keys = createKeys()
  at(keys, "NumpadEnter", 0)
  keys.letGo()
  same(keys.due(5000).kind, "nothing")
})

test("what is no key of ours is passed on, and a keyboard that hides its keys is told", () => {
  const keys = createKeys()
  same(at(keys, "Tab", 0).kind, "passed")
  same(at(keys, "NumLock", 100).kind, "passed")
  same(kind(at(keys, "", 200)), ["refused", "hidden"])
})

test("a pedal is one more key for cell done, and letters can be switched off", () => {
  const keys = createKeys({ pedal: "F13", letters: false })
  same(kind(at(keys, "F13", 0)), ["press", "0"])
  same(at(keys, "KeyJ", 100).kind, "passed")
  same(kind(at(createKeys(), "KeyJ", 0)), ["press", "5"])
  same([isFree("F13"), isFree("Numpad4"), isFree("Tab"), isFree("")], [true, false, false, false])
  same(letterOf("5"), "KeyJ")
})
