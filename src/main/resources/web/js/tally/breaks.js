// When to look up: after five filters or 22 minutes at the eyepieces (common practice, no source
// for the exact figures).

const FILTERS = 5
const MINUTES = 22
/** Longer away than this was a break. */
const BREAK = 5 * 60_000

/** @param {() => number} now */
export function createBreaks(now) {
  let since = now()
  let seen = now()
  let filters = 0

  return {
    began() {
      if (now() - seen > BREAK) start()
    },
    /** @returns {boolean} whether the eyes should rest now */
    ended() {
      seen = now()
      filters++
      const due = filters >= FILTERS || now() - since > MINUTES * 60_000
      if (due) start()
      return due
    },
  }

  function start() {
    since = now()
    filters = 0
  }
}
