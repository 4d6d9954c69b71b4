// What was chosen at this screen, and which filter lies under the microscope: kept on the device,
// so that a closed page goes on where it was.

const KEY = "microscope"

/**
 * @param {any} log
 * @param {string} person who said so at this screen
 */
export async function openSession(log, person) {
  /** @type {any} */
  let session = { mode: "speech", letters: true, ...(await log.session(KEY)) }
  session.person ||= person

  return {
    now: () => session,
    async choose(/** @type {any} */ changes) {
      session = { ...session, ...changes }
      await log.keepSession(session, KEY)
    },
  }
}
