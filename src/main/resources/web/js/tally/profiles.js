// What each key means for each pest that is looked for. The geometry is the same for every pest.

/** Marks and the keys they have; natural enemies are told apart by their stage. */
const KEYS = { pupal: "7", egg: "8", male: "9", larva1: "4", larva: "5", adult: "6" }
const ENEMY_STAGES = { egg: "8", nymph: "5" }
const SAME_FOR_ALL = {
  1: { pest: "predatory-mites", stage: "motile" },
  2: { pest: "other", stage: "any" },
  3: { pest: "unsure", stage: "any" },
}

/**
 * @param {any} sheet
 * @param {string[]} pests codes of what is looked for, the most important first
 * @returns {{ pest: string, name: string, keys: Record<string, any> }[]}
 */
export function profilesOf(sheet, pests) {
  return pests
    .filter((pest) => sheet.stages[pest])
    .map((pest) => ({ pest, name: sheet.pestNames[pest], keys: keysOf(sheet, pest) }))
}

function keysOf(/** @type {any} */ sheet, /** @type {string} */ pest) {
  /** @type {Record<string, any>} */
  const keys = {}
  for (const [key, meant] of Object.entries(SAME_FOR_ALL)) {
    const { mark } = sheet.stages[meant.pest][meant.stage]
    keys[key] = { ...meant, mark, name: sheet.words["tally.short." + meant.pest] }
  }
  for (const [stage, { mark, name }] of Object.entries(sheet.stages[pest])) {
    const key = mark === "enemy" ? (ENEMY_STAGES[stage] ?? "6") : KEYS[mark]
    if (key) keys[key] = { pest, stage, mark, name }
  }
  return keys
}
