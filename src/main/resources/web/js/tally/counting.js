// Counts one filter: a press goes to the disk, then it is heard, then it is seen. Presses wait in a
// row for each other, so that each knows what the one before did. Touches no page.

import { walkOf } from "#js/tally/grid.js"
import { deedOf } from "#js/tally/presses.js"
import { stateOf } from "#js/tally/reading.js"

/**
 * @typedef {{ code: string, events: any[], pests: string[], walkStart: number }} FilterToRead
 * @typedef {{ log: any, filter: FilterToRead, rows: number[], passes: number, person: string,
 *   profiles: any[], now: () => number, heard: (what: Heard) => number,
 *   mayStop: (counting: any, state: import("#js/tally/reading.js").State) => boolean,
 *   changed: (what: Heard) => void }} Wish now: milliseconds since 1970; mayStop: as the stop rules
 *   have it
 * @typedef {{ kind: string, mark?: string, pest?: number, words?: [string, ...any[]],
 *   cell?: string, stage?: { pest: string, stage: string },
 *   fault?: any }} Heard kind: name of a sound, or "count"
 * @typedef {Awaited<ReturnType<typeof startCounting>>} Counting
 */

/** @param {Wish} wish */
export async function startCounting(wish) {
  const { log, filter, now } = wish
  const device = await log.device()
  const walk = walkOf(wish.rows, wish.passes, filter.walkStart % wish.passes)
  const own = (await log.eventsOf(filter.code)).map((/** @type {any} */ e) => ({ ...e, device }))
  /** @type {any[]} */
  let events = [...filter.events, ...own]
  /** @type {string} */
  let wanted = ""
  let profile = 0
  /** @type {{ toCommit: number, toHeard: number, inDevice: number }[]} */
  const timings = []
  let known = { events, wanted, state: stateOf(events, walk, wanted) }
  let row = Promise.resolve()

  const counting = {
    device,
    walk,
    filter,
    timings: () => timings,
    state,
    own: () => events.filter((event) => event.device === device),
    profile: () => wish.profiles[profile],
    profileIndex: () => profile,
    turn: (/** @type {number} */ by) => {
      const number = wish.profiles.length
      profile = (profile + by + number) % number
    },
    goTo: (/** @type {string} */ cell) => (wanted = cell),
    mayStop: (/** @type {any} */ state) => wish.mayStop(counting, state),
    person: wish.person,
    profiles: wish.profiles,
    passes: wish.passes,
    now,
    /** Waits for everything pressed so far. */
    settled: () => row,
    press,
    record,
  }
  return counting

  /** Worked out once for what is pressed so far: it is asked for many times. */
  function state() {
    if (known.events !== events || known.wanted !== wanted) {
      known = { events, wanted, state: stateOf(events, walk, wanted) }
    }
    return known.state
  }

  /**
   * @param {string} key
   * @param {number} [down] when it went down, by the clock of performance.now
   */
  function press(key, down = performance.now()) {
    row = row.then(() => act(key, down)).catch((fault) => console.warn("A press failed", fault))
    return row
  }

  async function act(/** @type {string} */ key, /** @type {number} */ down) {
    const meant = deedOf(key, counting)
    if (meant.deeds.length > 0 && !(await record(meant.deeds, down))) return
    if ("wanted" in meant) wanted = meant.wanted ?? ""
    tell(meant.after ? meant.after(counting.state()) : meant.heard, down)
  }

  /** @returns {Promise<boolean>} whether it is on the disk */
  async function record(/** @type {any[]} */ deeds, down = performance.now()) {
    const at = new Date(now()).toISOString()
    const fresh = deeds.map((deed) => ({ sample: filter.code, at, person: wish.person, deed }))
    try {
      const last = await log.append(fresh)
      const kept = fresh.map((event, i) => ({
        ...event,
        device,
        sequence: last - fresh.length + 1 + i,
      }))
      events = [...events, ...kept]
      timings.push({ toCommit: performance.now() - down, toHeard: NaN, inDevice: NaN })
      return true
    } catch (fault) {
      console.warn("Not kept", fault)
      tell({ kind: "refused", words: [notKept(fault)], fault }, NaN)
      return false
    }
  }

  function tell(/** @type {Heard} */ what, /** @type {number} */ down) {
    const until = wish.heard(what)
    const timing = timings.at(-1)
    if (timing && Number.isNaN(timing.toHeard)) {
      timing.toHeard = performance.now() + until - down
      timing.inDevice = until
    }
    wish.changed(what)
  }
}

const notKept = (/** @type {any} */ fault) =>
  fault?.name === "QuotaExceededError" ? "tally.not-kept.full" : "tally.not-kept"
