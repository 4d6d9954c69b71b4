// What the finds are called at the microscope.

/**
 * @param {() => any} sheet
 * @param {() => string} main code of the pest that the filter is read for
 */
export function namesOf(sheet, main) {
  return { stageName, findName, markOf }

  /** Said: another pest than the main one is named with it. */
  function findName(/** @type {any} */ find) {
    const { words, pestNames } = sheet()
    const { pest } = find
    const isPlain = pest === main() || main() === "" || words["tally.short." + pest]
    return isPlain ? stageName(find) : `${stageName(find)}, ${pestNames[pest] ?? pest}`
  }

  /** Seen beside a mark: short. */
  function stageName(/** @type {any} */ { pest, stage, life_stage: code = stage }) {
    const { words, stages } = sheet()
    return words["tally.short." + pest] ?? stages[pest]?.[code]?.name ?? code
  }

  function markOf(/** @type {string} */ pest, /** @type {string} */ stage) {
    return sheet().stages[pest]?.[stage]?.mark ?? "other"
  }
}
