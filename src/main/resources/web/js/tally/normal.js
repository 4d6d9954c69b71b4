// The standard normal distribution, to 12 digits or more, its tails included.

const NEAR = 3 // from here on the continued fraction is the better of the two
const FRACTIONS = 200
const MOST_STEPS = 1000
const CLOSE_ENOUGH = 1e-15

/** @param {number} z */
const density = (z) => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI)

/**
 * The chance of more than z. Near the middle by the series ½ − φ(z)(z + z³/3 + z⁵/(3·5) + …), far
 * out by Laplace's continued fraction φ(z)/(z + 1/(z + 2/(z + 3/(z + …)))): Abramowitz and Stegun
 * (1964), 26.2.11 and 26.2.14.
 *
 * @param {number} z standard deviations from the mean
 * @returns {number} in [0, 1]
 */
export function normalAbove(z) {
  if (z < 0) return 1 - normalAbove(-z)
  if (z > NEAR) {
    let rest = z
    for (let i = FRACTIONS; i > 0; i--) rest = z + i / rest
    return density(z) / rest
  }
  let [term, sum] = [z, z]
  for (let odd = 3; term > sum * 1e-17; odd += 2) {
    term *= (z * z) / odd
    sum += term
  }
  return 0.5 - density(z) * sum
}

/**
 * The value that is exceeded with this chance. Newton's steps from 0: beyond 0 the curve is bent
 * one way, so that they never go past it.
 *
 * @param {number} above in (0, 1)
 * @returns {number} z with P(Z > z) = above
 */
export function normalQuantileAbove(above) {
  if (above > 0.5) return -normalQuantileAbove(1 - above)
  let z = 0
  for (let i = 0; i < MOST_STEPS; i++) {
    const step = (normalAbove(z) - above) / density(z)
    z += step
    if (Math.abs(step) <= CLOSE_ENOUGH * z) break
  }
  return z
}
