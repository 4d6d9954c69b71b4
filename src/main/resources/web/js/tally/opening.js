// Lid and base, and which filters wait.

import { readCode } from "#js/walk/label-code.js"

const WASHED_AGAIN = ["crop", "spike"]

/**
 * Do lid and base belong together? A swapped lid gives one bench's insects to another.
 *
 * @param {any} sheet
 * @param {string} lid as typed or scanned
 * @param {string} base empty while it is not read
 * @param {number} [wash] which wash of the jar lies there
 * @returns {{ code?: string, fault?: string, at?: "lid" | "base" }} no code and no fault: the base
 *   is to be read
 */
export function checkedPair(sheet, lid, base, wash = 1) {
  const { filters, seeded, read } = sheet
  const known = [...filters.map(labelOf), ...[...seeded, ...read].map(({ code }) => code)]
  const first = readCode(lid, known)
  if ("fault" in first) return { fault: first.fault, at: "lid" }
  const fault = faultOf(sheet, first.code, wash)
  if (fault) return { fault, at: "lid" }
  if (base.trim() === "") return {}
  const second = readCode(base, known)
  if ("fault" in second) return { fault: second.fault, at: "base" }
  return second.code === first.code ? { code: first.code } : { fault: "no-pair", at: "base" }
}

function faultOf(
  /** @type {any} */ sheet,
  /** @type {string} */ label,
  /** @type {number} */ wash,
) {
  if (sheet.seeded.some((/** @type {any} */ one) => one.code === label)) return undefined
  if (wash > 1) return jarOf(sheet, label) ? undefined : "unknown"
  if (waitingUnder(sheet, label)) return undefined
  return sheet.read.some((/** @type {any} */ one) => one.code === label) ? "read" : "unknown"
}

/** What stands on lid and base of a filter: a recount has the label of the first count. */
export const labelOf = (/** @type {any} */ filter) => filter.label ?? filter.code

/**
 * @param {any} sheet
 * @param {string} label
 * @returns {any} the filter that waits under it: its first count, else its recount
 */
export function waitingUnder(sheet, label) {
  const waiting = sheet.filters.filter(isWaiting)
  return (
    waiting.find((/** @type {any} */ one) => one.code === label) ??
    waiting.find((/** @type {any} */ one) => one.label === label)
  )
}

/**
 * @param {any} sheet
 * @param {string} code
 * @returns {any} the jar that may have been washed again, read or not
 */
export const jarOf = (sheet, code) =>
  [...sheet.filters, ...sheet.read].find(
    (one) => one.code === code && WASHED_AGAIN.includes(one.role),
  )

const isWaiting = (/** @type {any} */ filter) => !["read", "partly_read"].includes(filter.state)

const URGENCY = ["late", "begun", "now", "soon", "not-frozen"]

/**
 * @param {any[]} filters of the sheet
 * @param {number} now milliseconds
 * @returns {any[]} filters with `when` and `at`, the most urgent first
 */
export function dueFilters(filters, now) {
  return filters
    .filter(isWaiting)
    .map((filter) => ({ ...filter, ...dueAt(filter, now) }))
    .sort(
      (one, other) =>
        URGENCY.indexOf(one.when) - URGENCY.indexOf(other.when) ||
        (one.at?.getTime() ?? Infinity) - (other.at?.getTime() ?? Infinity) ||
        (one.code < other.code ? -1 : 1),
    )
}

/** @param {any} filter @param {number} now */
function dueAt({ state, earliestRead, readBy }, now) {
  const by = readBy ? new Date(readBy) : undefined
  if (state === "reading") return { when: "begun", at: by }
  if (!earliestRead) return { when: "not-frozen" }
  const from = new Date(earliestRead)
  if (from.getTime() > now) return { when: "soon", at: from }
  return by && by.getTime() < now ? { when: "late", at: by } : { when: "now", at: by }
}
