// Days and moments by the clocks of a site.

/**
 * @param {Date} moment
 * @param {string} zone
 * @returns {string} such as 2026-05-11
 */
export function dayOf(moment, zone) {
  const parts = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
  }).formatToParts(moment)
  const part = (/** @type {string} */ type) => parts.find((one) => one.type === type)?.value ?? ""
  return `${part("year")}-${part("month")}-${part("day")}`
}

/**
 * @param {Date} moment
 * @param {string} zone
 * @param {string} language
 * @returns {string} such as Tue 12 May, 10:52
 */
export function momentOf(moment, zone, language) {
  return new Intl.DateTimeFormat(language === "en" ? "en-GB" : language, {
    timeZone: zone,
    weekday: "short",
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
  }).format(moment)
}
