// What was found of what had been placed on a known filter.

/** @typedef {{ cell: string, pest: string, stage: string }} Placed */

/**
 * @param {Placed[]} placed
 * @param {Map<string, import("#js/tally/fold.js").Cell>} cells
 * @returns {{ found: number, known: number, missed: Placed[], wrong: Placed[],
 *   byStage: Record<string, { found: number, known: number }> }} wrong: counted where none lies
 */
export function compared(placed, cells) {
  const left = new Map()
  for (const cell of cells.values()) {
    for (const [pest, stages] of Object.entries(cell.counts)) {
      for (const [stage, number] of Object.entries(stages))
        left.set(keyOf(cell.name, pest, stage), number)
    }
  }
  /** @type {Record<string, { found: number, known: number }>} */
  const byStage = {}
  const missed = placed.filter(({ cell, pest, stage }) => {
    const key = keyOf(cell, pest, stage)
    const of = (byStage[pest + " " + stage] ??= { found: 0, known: 0 })
    const number = left.get(key) ?? 0
    left.set(key, number - 1)
    of.known++
    of.found += number > 0 ? 1 : 0
    return number <= 0
  })
  const wrong = [...left].flatMap(([key, number]) => Array(Math.max(0, number)).fill(placeOf(key)))
  return { found: placed.length - missed.length, known: placed.length, missed, wrong, byStage }
}

const keyOf = (/** @type {string[]} */ ...parts) => parts.join("|")

/** @returns {Placed} */
function placeOf(/** @type {string} */ key) {
  const [cell, pest, stage] = key.split("|")
  return { cell, pest, stage }
}
