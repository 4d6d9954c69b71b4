// What this device recorded, in the browser's own database. A step is told to be kept only after
// the browser has written it to the disk.

import { newDeviceName } from "#js/sync/device.js"

/** @typedef {{ sample: string, at: string, person: string, deed: object }} New */

/**
 * @param {string} nursery each site has a log and a device name of its own
 */
export async function openLog(nursery) {
  const database = await open("jarwise-" + nursery)
  const read = (/** @type {string} */ store) => database.transaction(store).objectStore(store)
  const meta = (/** @type {string} */ key) => asked(read("meta").get(key))

  return {
    /** Records deeds, all or none; resolved once they are on the disk. */
    async append(/** @type {New[]} */ deeds) {
      await device()
      const strict = database.transaction("events", "readwrite", { durability: "strict" })
      const events = strict.objectStore("events")
      const last = await asked(events.openKeyCursor(null, "prev"))
      let sequence = last ? Number(last.key) : 0
      try {
        for (const deed of deeds) events.add({ sequence: ++sequence, ...deed })
      } catch (fault) {
        strict.abort()
        throw fault
      }
      await done(strict)
      return sequence
    },
    /** @returns {Promise<any[]>} everything recorded here, by number */
    events: () => asked(read("events").getAll()),
    device,
    /** @returns {Promise<number>} */
    upTo: async () => (await meta("upTo")) ?? 0,
    setUpTo: (/** @type {number} */ upTo) => put("meta", upTo, "upTo"),
    /** What is half answered, so that a closed page goes on where it was. */
    session: async () => (await meta("session")) ?? {},
    keepSession: (/** @type {object} */ session) => put("meta", session, "session"),
    round: (/** @type {string} */ id) => asked(read("rounds").get(id)),
    rounds: () => asked(read("rounds").getAll()),
    keepRound: (/** @type {object} */ round) => put("rounds", round),
  }

  /** @returns {Promise<string>} */
  async function device() {
    const naming = database.transaction("meta", "readwrite", { durability: "strict" })
    const names = naming.objectStore("meta")
    let name = await asked(names.get("device"))
    if (!name) {
      name = newDeviceName()
      names.put(name, "device")
    }
    await done(naming)
    return name
  }

  /**
   * @param {string} store
   * @param {any} value
   * @param {string} [key]
   */
  async function put(store, value, key = "") {
    const writing = database.transaction(store, "readwrite")
    if (key) writing.objectStore(store).put(value, key)
    else writing.objectStore(store).put(value)
    await done(writing)
  }
}

/**
 * @param {string} name
 * @returns {Promise<IDBDatabase>}
 */
function open(name) {
  const opening = indexedDB.open(name, 1)
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore("events", { keyPath: "sequence" })
    opening.result.createObjectStore("meta")
    opening.result.createObjectStore("rounds", { keyPath: "round.id" })
  }
  return asked(opening)
}

/**
 * @template T
 * @param {IDBRequest<T>} request
 * @returns {Promise<T>}
 */
function asked(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
}

/** @param {IDBTransaction} transaction */
function done(transaction) {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve(undefined)
    transaction.onabort = () => reject(transaction.error)
  })
}
