// Lid and base, and which filters wait.

import { readCode } from "#js/walk/label-code.js"

/**
 * Do lid and base belong together? A swapped lid gives one bench's insects to another.
 *
 * @param {any} sheet
 * @param {string} lid as typed or scanned
 * @param {string} base empty while it is not read
 * @returns {{ code?: string, fault?: string, at?: "lid" | "base" }} no code and no fault: the base
 *   is to be read
 */
export function checkedPair(sheet, lid, base) {
  const known = [...sheet.filters, ...sheet.seeded].map((/** @type {any} */ one) => one.code)
  const first = readCode(lid, known)
  if ("fault" in first) return { fault: first.fault, at: "lid" }
  if (!known.includes(first.code)) return { fault: "unknown", at: "lid" }
  if (base.trim() === "") return {}
  const second = readCode(base, known)
  if ("fault" in second) return { fault: second.fault, at: "base" }
  return second.code === first.code ? { code: first.code } : { fault: "no-pair", at: "base" }
}

const URGENCY = ["late", "begun", "now", "soon", "not-frozen"]

/**
 * @param {any[]} filters of the sheet
 * @param {number} now milliseconds
 * @returns {any[]} filters with `when` and `at`, the most urgent first
 */
export function dueFilters(filters, now) {
  return filters
    .filter((filter) => !["read", "partly_read"].includes(filter.state))
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
