// Physical keys and what they are called here.

/** Keys of a numeric keypad by what they are called here. */
export const KEYPAD = {
  Numpad0: "0",
  Numpad1: "1",
  Numpad2: "2",
  Numpad3: "3",
  Numpad4: "4",
  Numpad5: "5",
  Numpad6: "6",
  Numpad7: "7",
  Numpad8: "8",
  Numpad9: "9",
  NumpadDecimal: ".",
  NumpadComma: ".",
  NumpadSubtract: "-",
  NumpadAdd: "+",
  NumpadDivide: "/",
  NumpadMultiply: "*",
  NumpadEnter: "Enter",
}

/** The same on the letters of a laptop, the home key under the right forefinger. */
export const LETTERS = {
  Space: "0",
  KeyN: "1",
  KeyM: "2",
  Comma: "3",
  KeyH: "4",
  KeyJ: "5",
  KeyK: "6",
  KeyY: "7",
  KeyU: "8",
  KeyI: "9",
  KeyX: ".",
  Backspace: "-",
  KeyV: "+",
  KeyQ: "/",
  KeyW: "*",
  Enter: "Enter",
}

/** Browsers' own, which are none of ours. */
const PASSED = new Set(["Tab", "Escape", "NumLock", "F5", "F11", "F12"])

/** @param {string} code @returns {boolean} whether a pedal may send it */
export const isFree = (code) => code !== "" && !(code in KEYPAD) && !PASSED.has(code)

/** @param {string} key @returns {string} code of the letter key with this meaning */
export const letterOf = (key) =>
  Object.entries(LETTERS).find(([, meaning]) => meaning === key)?.[0] ?? ""
