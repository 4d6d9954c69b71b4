// The grid on a filter and the order in which its cells are read. The server makes the same walk in
// CellWalk.java; testdata/tally-walk/*.json holds both to it.

/**
 * @param {number[]} rows cells in each row from the top, centred below each other
 * @returns {string[]} every cell once, row by row, every second row backwards
 */
export function snake(rows) {
  const widest = Math.max(...rows)
  return rows.flatMap((length, row) => {
    const first = Math.floor((widest - length) / 2)
    const cells = Array.from({ length }, (_, i) => cellName(row, first + i))
    return row % 2 === 1 ? cells.reverse() : cells
  })
}

/**
 * Every m-th cell of the snake from a start, then the cell after each of those, and so on.
 *
 * @param {number[]} rows
 * @param {number} passes m; 1 reads the whole filter in one go
 * @param {number} start 0 to m − 1
 * @returns {string[][]} cells of each pass in the order of reading
 */
export function walkOf(rows, passes, start) {
  const cells = snake(rows)
  return Array.from({ length: passes }, (_, pass) =>
    cells.filter((_cell, i) => i % passes === (start + pass) % passes),
  )
}

/**
 * @param {number} row 0 at the top
 * @param {number} column 0 at the left
 */
export const cellName = (row, column) => String.fromCharCode(65 + row) + (column + 1)

/**
 * @param {string} cell such as B7
 * @returns {{ row: number, column: number }}
 */
export const placeOf = (cell) => ({
  row: cell.charCodeAt(0) - 65,
  column: Number(cell.slice(1)) - 1,
})
