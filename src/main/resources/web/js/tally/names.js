// What the finds are called at the microscope.

/**
 * @param {() => any} sheet
 * @param {() => string} main code of the pest that the filter is read for
 */
export function namesOf(sheet, main) {
  return { stageName, markOf }

  /** Short, since it is heard after many presses; another pest than the main one is named. */
  function stageName(/** @type {any} */ { pest, stage, life_stage: code = stage }) {
    const { words, stages, pestNames } = sheet()
    const short = words["tally.short." + pest]
    if (short) return short
    const name = stages[pest]?.[code]?.name ?? code
    return pest === main() || main() === "" ? name : `${name}, ${pestNames[pest] ?? pest}`
  }

  function markOf(/** @type {string} */ pest, /** @type {string} */ stage) {
    return sheet().stages[pest]?.[stage]?.mark ?? "other"
  }
}
