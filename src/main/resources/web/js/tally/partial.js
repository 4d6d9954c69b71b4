// What reading a part of a filter says about all of it. The server works out the same in
// PartialReading.java; testdata/partial/reading/*.json holds both to it. See docs/methods.md,
// "A part of a filter".

import { normalAbove, normalQuantileAbove } from "#js/tally/normal.js"

/**
 * What the cells that were not read may hold.
 *
 * @typedef {{ standardDeviation: number, atMost: (individuals: number) => number,
 *   quantile: (probability: number) => number, quantileAbove: (probability: number) => number
 * }} Unread
 * @typedef {{ found: number, shareRead: number, estimate: number, relativeStandardError: number,
 *   lower: (level: number) => number, upper: (level: number) => number,
 *   upperOneSided: (level: number) => number, atMost: (individuals: number) => number
 * }} PartialReading
 */

const NEGLIGIBLE = 1e-25 // of the likeliest number
const REACHED = 1 - 1e-13
const NOT_EXCEEDED = 1 + 1e-12

/**
 * @param {number[]} counts individuals in each cell read, at least one cell, completed passes only
 * @param {number} cellsTotal cells that can be read, at least as many
 * @returns {PartialReading} `atMost` is the chance of so many or fewer on the whole filter
 */
export function partialReading(counts, cellsTotal) {
  const read = counts.length
  if (!(read > 0 && read <= cellsTotal)) {
    throw new RangeError(`${read} cells are read of ${cellsTotal}; it must be 1 or more of them`)
  }
  const found = counts.reduce((sum, count) => sum + count, 0)
  const shareRead = read / cellsTotal
  const unread = unreadOf(counts, found, cellsTotal)
  const estimate = found / shareRead
  return {
    found,
    shareRead,
    estimate,
    relativeStandardError: shareRead === 1 ? 0 : unread.standardDeviation / estimate,
    lower: (level) => found + unread.quantile((1 - level) / 2),
    upper: (level) => found + unread.quantileAbove((1 - level) / 2),
    upperOneSided: (level) => found + unread.quantileAbove(1 - level),
    atMost: (individuals) => unread.atMost(individuals - found),
  }
}

/**
 * The wider of chance and cells, where cells differ more than chance has it.
 *
 * @param {number[]} counts
 * @param {number} found
 * @param {number} cellsTotal
 * @returns {Unread}
 */
function unreadOf(counts, found, cellsTotal) {
  const read = counts.length
  const byChance = unreadByChance(found, read / cellsTotal)
  const mean = found / read
  const squares = counts.reduce((sum, count) => sum + (count - mean) ** 2, 0)
  const variance = read > 1 ? squares / (read - 1) : 0
  if (!(variance > mean) || read === cellsTotal) return byChance
  const left = cellsTotal - read
  const byCells = unreadByCells(mean * left, (cellsTotal * left * variance) / read)
  return width(byCells) > width(byChance) ? byCells : byChance
}

/** @param {Unread} unread */
const width = (unread) => unread.quantileAbove(0.025) - unread.quantile(0.025)

/**
 * NB(found + 1, share read): P(y + 1)/P(y) = (1 − share)(found + 1 + y)/(y + 1), walked from the
 * likeliest number both ways and scaled to add up to 1, so that nothing is too small to start from.
 *
 * @param {number} found
 * @param {number} share read, in (0, 1]
 * @returns {Unread}
 */
function unreadByChance(found, share) {
  const k = found + 1
  const ratio = (/** @type {number} */ y) => ((1 - share) * (k + y)) / (y + 1)
  const likeliest = Math.floor((found * (1 - share)) / share)
  const up = [1]
  for (let y = likeliest; up[up.length - 1] > NEGLIGIBLE; y++) up.push(up[up.length - 1] * ratio(y))
  const down = []
  let weight = 1
  for (let y = likeliest - 1; y >= 0 && weight > NEGLIGIBLE; y--) down.push((weight /= ratio(y)))
  const least = likeliest - down.length
  const weights = [...down.reverse(), ...up]
  const below = sums(weights)
  const above = sums(weights.slice().reverse()).reverse()
  const total = below[below.length - 1]
  const exceeding = (/** @type {number} */ i) => (above[i + 1] ?? 0) / total
  return {
    standardDeviation: Math.sqrt(k * (1 - share)) / share,
    atMost: (y) => (y < least ? 0 : 1 - exceeding(Math.min(y - least, weights.length - 1))),
    quantile: (p) => least + first(weights, (i) => below[i] / total >= p * REACHED),
    quantileAbove: (p) => least + first(weights, (i) => exceeding(i) <= p * NOT_EXCEEDED),
  }
}

/**
 * @param {number[]} weights
 * @returns {number[]}
 */
function sums(weights) {
  let sum = 0
  return weights.map((weight) => (sum += weight))
}

/**
 * @param {number[]} weights
 * @param {(i: number) => boolean} holds
 */
const first = (weights, holds) => weights.findIndex((_, i) => holds(i))

/**
 * Log-normal with this mean and variance.
 *
 * @param {number} mean
 * @param {number} variance
 * @returns {Unread}
 */
function unreadByCells(mean, variance) {
  const spread = Math.log1p(variance / (mean * mean))
  const [location, shape] = [Math.log(mean) - spread / 2, Math.sqrt(spread)]
  const at = (/** @type {number} */ z) => Math.exp(location + shape * z)
  return {
    standardDeviation: Math.sqrt(variance),
    atMost: (y) => (y < 0 ? 0 : normalAbove((location - Math.log(y + 0.5)) / shape)),
    quantile: (p) => at(-normalQuantileAbove(p)),
    quantileAbove: (p) => at(normalQuantileAbove(p)),
  }
}
