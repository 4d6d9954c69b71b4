// The desk's clock, as far as it is known here: a phone whose own clock is wrong must not let
// anyone onto a bench too early, nor call a filter late that is not.

/**
 * @param {any} told what the desk told just now
 * @param {number} came by the clock of this device, milliseconds since 1970
 * @returns {any} the same with how far the desk's clock is ahead, milliseconds
 */
export const withClock = (told, came = Date.now()) => ({
  ...told,
  clockAhead: told.time === undefined ? 0 : Date.parse(told.time) - came,
})

/**
 * @param {any} told what the desk told last
 * @returns {number} milliseconds since 1970, by the desk's clock
 */
export const deskTime = (told, own = Date.now()) => own + (told.clockAhead ?? 0)
