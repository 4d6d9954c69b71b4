// The shake: what its seconds say, and the dial that shows them as a clock of 60 s.

/** @typedef {{ shakeSecondsLeast: number, shakeSecondsMost: number }} ShakeLimits */

/**
 * @param {number} seconds
 * @param {ShakeLimits} limits
 * @returns {"short" | "to-protocol" | "long"}
 */
export function judge(seconds, limits) {
  if (seconds < limits.shakeSecondsLeast) return "short"
  return seconds > limits.shakeSecondsMost ? "long" : "to-protocol"
}

/**
 * @param {ShakeLimits} limits
 * @returns {number} when the tone sounds: a little after the least, 45 s for 40 to 60
 */
export function target({ shakeSecondsLeast, shakeSecondsMost }) {
  return Math.round(shakeSecondsLeast + (shakeSecondsMost - shakeSecondsLeast) / 4)
}

/**
 * @param {number} from seconds, 0 at the top
 * @param {number} to seconds; a full turn and more is drawn as just under one
 * @param {number} radius
 * @returns {string} the path of an arc around 0 0, clockwise
 */
export function arc(from, to, radius) {
  const end = Math.min(to, from + 59.99)
  const [x1, y1] = point(from, radius)
  const [x2, y2] = point(end, radius)
  const wide = end - from > 30 ? 1 : 0
  return `M${x1} ${y1}A${radius} ${radius} 0 ${wide} 1 ${x2} ${y2}`
}

/**
 * @param {number} seconds
 * @param {number} radius
 * @returns {[number, number]}
 */
export function point(seconds, radius) {
  const angle = (seconds / 60) * 2 * Math.PI
  return [round(radius * Math.sin(angle)), round(-radius * Math.cos(angle))]
}

const round = (/** @type {number} */ value) => Math.round(value * 100) / 100
