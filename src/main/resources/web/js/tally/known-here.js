// The filters as the server told them, and what this device has done to them since.

import { foldFilter } from "#js/tally/fold.js"

const BEGUN = ["freezer_out", "read"]

/**
 * @param {any} log
 * @param {any} first sheet as it is when the page opens
 */
export async function openKnown(log, first) {
  const device = await log.device()
  let told = first
  let sheet = first
  await look()

  return {
    sheet: () => sheet,
    /** Which version of the page's program the server has. */
    program: () => told.program,
    /** Looks at what this device did since. */
    look,
    renew(/** @type {any} */ fresh) {
      told = fresh
      return look()
    },
  }

  async function look() {
    sheet = withOwn(told, await log.events(), device)
  }
}

/**
 * @param {any} sheet as last got from the server
 * @param {any[]} own everything recorded on this device
 * @param {string} device its name
 * @returns {any} the sheet with the states that follow from both; filters read here are in `read`
 */
export function withOwn(sheet, own, device) {
  /** @type {Record<string, any[]>} */
  const bySample = {}
  for (const event of own) (bySample[event.sample] ??= []).push({ ...event, device })
  const filters = sheet.filters.map((/** @type {any} */ filter) => {
    const here = bySample[filter.code]
    return here ? { ...filter, state: stateOf(filter, here) } : filter
  })
  const readHere = filters.filter((/** @type {any} */ one) => one.state === "read")
  const stands = new Set(readHere.map(standOf))
  return {
    ...sheet,
    filters: filters.map((/** @type {any} */ one) =>
      stands.has(standOf(one)) ? withoutLimits(one) : one,
    ),
    read: [...sheet.read, ...readHere],
  }
}

function stateOf(/** @type {any} */ filter, /** @type {any[]} */ here) {
  const { done, standing } = foldFilter([...filter.events, ...here])
  if (done) return "read"
  const isBegun = standing.some(({ deed }) => deed.deed !== "step" || BEGUN.includes(deed.step))
  return isBegun ? "reading" : filter.state
}

const standOf = (/** @type {any} */ { house, bench }) => `${house}/${bench}`

/** The limits were worked out before the other filter was read: they hold no longer. */
const withoutLimits = (/** @type {any} */ filter) =>
  filter.stop ? { ...filter, stop: { ...filter.stop, groups: [] } } : filter
