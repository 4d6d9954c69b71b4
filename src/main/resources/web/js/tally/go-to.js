// Going to a cell by the keypad alone: the row's number, then the column's.

import { cellName } from "#js/tally/grid.js"

/** @param {string[]} cells of the filter */
export function createGoTo(cells) {
  /** @type {string | undefined} */
  let typed

  return {
    begin: () => (typed = ""),
    isOn: () => typed !== undefined,
    end: () => (typed = undefined),
    /**
     * @param {string} key
     * @returns {{ done: boolean, cell?: string, fault?: string }}
     */
    key(key) {
      if (!/^[1-9]$/.test(key)) {
        typed = undefined
        return { done: true }
      }
      typed = (typed ?? "") + key
      if (typed.length < 2) return { done: false }
      const cell = cellName(Number(typed[0]) - 1, Number(typed[1]) - 1)
      typed = undefined
      return cells.includes(cell) ? { done: true, cell } : { done: true, fault: cell }
    },
  }
}
