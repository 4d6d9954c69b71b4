// What this device recorded, in the browser's own database. A deed is told to be kept only after
// the browser has written it to the disk.

import { open, asked, done } from "#js/sync/database.js"
import { newDeviceName } from "#js/sync/device.js"

/** @typedef {{ sample: string, at: string, person: string, deed: object }} New */

/**
 * @param {string} nursery each site has a log and a device name of its own
 */
export async function openLog(nursery) {
  const database = await open("jarwise-" + nursery)
  const read = (/** @type {string} */ store) => database.transaction(store).objectStore(store)
  const meta = (/** @type {string} */ key) => asked(read("meta").get(key))
  const after = (/** @type {number} */ upTo) => IDBKeyRange.lowerBound(upTo, true)
  const name = await named(database)

  return {
    /** Records deeds, all or none; resolved, with the last number, once they are on the disk. */
    async append(/** @type {New[]} */ deeds) {
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
      strict.commit()
      await done(strict)
      return sequence
    },
    /** @returns {Promise<any[]>} everything recorded here, by number */
    events: () => asked(read("events").getAll()),
    /** @returns {Promise<any[]>} what was recorded here about one sample, by number */
    eventsOf: (/** @type {string} */ sample) =>
      asked(read("events").index("sample").getAll(sample)),
    /** @returns {Promise<any[]>} what was recorded after a number, at most so many */
    eventsAfter: (/** @type {number} */ upTo, /** @type {number} */ most) =>
      asked(read("events").getAll(after(upTo), most)),
    /** @returns {Promise<number>} how many were recorded after a number */
    countAfter: (/** @type {number} */ upTo) => asked(read("events").count(after(upTo))),
    /** @returns {Promise<string>} */
    device: async () => name,
    /** @returns {Promise<number>} */
    upTo: async () => (await meta("upTo")) ?? 0,
    setUpTo: (/** @type {number} */ upTo) => put("meta", upTo, "upTo"),
    /** What is half answered, so that a closed page goes on where it was. */
    session: async (key = "session") => (await meta(key)) ?? {},
    keepSession: (/** @type {object} */ session, key = "session") => put("meta", session, key),
    round: (/** @type {string} */ id) => asked(read("rounds").get(id)),
    rounds: () => asked(read("rounds").getAll()),
    keepRound: (/** @type {object} */ round) => put("rounds", round),
    /** The filters to read and all that is needed for them, as last got from the server. */
    filters: () => asked(read("filters").get("latest")),
    keepFilters: (/** @type {object} */ filters) => put("filters", filters, "latest"),
    /** Photos that the server does not have yet, by their hash. */
    photos: () => asked(read("photos").getAllKeys()),
    photo: (/** @type {string} */ hash) => asked(read("photos").get(hash)),
    keepPhoto: (/** @type {string} */ hash, /** @type {Blob} */ photo) =>
      put("photos", photo, hash),
    async dropPhoto(/** @type {string} */ hash) {
      const writing = database.transaction("photos", "readwrite")
      writing.objectStore("photos").delete(hash)
      await done(writing)
    },
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
 * The device's name, made once; two pages that open at once agree on it.
 *
 * @param {IDBDatabase} database
 * @returns {Promise<string>}
 */
async function named(database) {
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
