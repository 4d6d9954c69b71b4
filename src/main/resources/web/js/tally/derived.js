// Filters that no label was printed for: another reading of a known filter, a further wash of a
// jar. They get a code of their own here, without a server.

import { jarOf, waitingUnder } from "#js/tally/opening.js"

/**
 * @param {any} sheet
 * @param {string} code as on lid and base
 * @param {{ wash: number, device: string, readings: number, today: string }} how
 * @returns {any} the filter to count, with `register`: what is recorded before anything else of it
 */
export function filterOf(sheet, code, { wash, device, readings, today }) {
  const known = sheet.seeded.find((/** @type {any} */ one) => one.code === code)
  if (known) return seededReading(sheet, known, { device, readings, today })
  return wash > 1 ? furtherWash(sheet, jarOf(sheet, code), wash) : waitingUnder(sheet, code)
}

function seededReading(/** @type {any} */ sheet, /** @type {any} */ known, /** @type {any} */ how) {
  const { device, readings, today } = how
  const own = device.replace("phone-", "").slice(0, 6)
  const pests = [...new Set(known.placed.map((/** @type {any} */ one) => one.pest))]
  return {
    code: `${known.code}.s-${own}-${readings + 1}`,
    label: known.code,
    name: known.name,
    role: "seeded",
    placed: known.placed,
    pests: pests.length > 0 ? pests : sheet.pests,
    walkStart: 0,
    wholeOnly: true,
    events: [],
    register: {
      method: "wash",
      role: "seeded",
      seeded_of: known.code,
      known: String(known.placed.length),
      collected_on: today,
    },
  }
}

function furtherWash(/** @type {any} */ sheet, /** @type {any} */ jar, /** @type {number} */ wash) {
  const { house, bench, cropLot, variety, growingPoints, fluid } = jar
  const place = { house, bench, crop_lot: cropLot, variety, fluid }
  const noted = Object.entries(place).filter(([, value]) => value)
  return {
    pests: sheet.pests,
    walkStart: 0,
    ...jar,
    code: `${jar.code}.w${wash}`,
    label: jar.code,
    role: "repeat_wash",
    events: [],
    stop: undefined,
    readBy: undefined,
    register: {
      ...Object.fromEntries(noted),
      method: "wash",
      role: "repeat_wash",
      repeat_of: jar.code,
      wash_number: String(wash),
      sampling_units: String(growingPoints),
    },
  }
}
