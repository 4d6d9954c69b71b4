// What comes next: which jar, and which part of the day's work.

import { foldJar, keyOf } from "#js/walk/fold.js"

/**
 * @typedef {{ code: string, walk: number, house: string, bench: string, variety: string,
 *   purpose: string, role: string, growingPoints: number, spot?: { along: number, across: number },
 *   events: import("#js/walk/fold.js").StepEvent[] }} PlannedJar
 * @typedef {PlannedJar & import("#js/walk/fold.js").Jar} WalkedJar
 */

/**
 * @param {PlannedJar[]} planned with what the server has of each
 * @param {import("#js/walk/fold.js").StepEvent[]} own what this phone recorded
 * @returns {WalkedJar[]}
 */
export function walked(planned, own) {
  return planned.map((jar) => ({
    ...jar,
    ...foldJar([...jar.events, ...own.filter((event) => event.sample === jar.code)]),
  }))
}

/** @param {PlannedJar} jar */
export const isOfCrop = (jar) => jar.role === "crop"

/** @param {WalkedJar} jar */
export const isToCut = (jar) => isOfCrop(jar) && jar.state === "planned"

/** @param {WalkedJar} jar */
export const isToWash = (jar) =>
  jar.state === "cut" || (!isOfCrop(jar) && jar.state === "planned")

/** @param {WalkedJar} jar */
export const isToFreeze = (jar) => jar.state === "washed"

/**
 * @param {WalkedJar[]} jars
 * @param {string[]} later codes put off; they come again at the end
 * @returns {WalkedJar | undefined}
 */
export function nextToCut(jars, later) {
  const open = jars.filter(isToCut)
  return (
    open.find((jar) => !later.includes(jar.code)) ??
    open.sort((one, other) => later.indexOf(one.code) - later.indexOf(other.code))[0]
  )
}

/**
 * @param {WalkedJar[]} jars
 * @returns {"walk" | "wash" | "freezer" | "done"}
 */
export function phaseOf(jars) {
  if (jars.some(isToCut)) return "walk"
  if (jars.some(isToWash)) return "wash"
  return jars.some(isToFreeze) ? "freezer" : "done"
}

/**
 * @param {import("#js/walk/fold.js").StepEvent[]} own what this phone recorded
 * @returns {import("#js/walk/fold.js").StepEvent | undefined} the last step not taken back
 */
export function lastStep(own) {
  const slips = new Set(own.map(({ deed }) => (deed.slip ? keyOf(deed.slip) : "")))
  return own.filter((event) => event.deed.deed === "step" && !slips.has(keyOf(event))).at(-1)
}
