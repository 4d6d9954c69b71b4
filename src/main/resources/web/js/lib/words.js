// Sentences that came with the page's data: {0}, {1} … are filled in.

/**
 * @param {Record<string, string>} texts
 * @returns {(key: string, ...values: (string | number)[]) => string}
 */
export function speaker(texts) {
  return (key, ...values) => {
    const text = texts[key]
    if (text === undefined) throw new Error("No text for " + key)
    return text.replace(/\{(\d)\}/g, (place, number) => String(values[Number(number)] ?? place))
  }
}

/**
 * @param {ReturnType<typeof speaker>} say
 * @returns {(key: string, number: number, ...more: (string | number)[]) => string} says "…one" or
 *   "…many", the number as {0}
 */
export function counter(say) {
  return (key, number, ...more) => say(key + (number === 1 ? "one" : "many"), number, ...more)
}
