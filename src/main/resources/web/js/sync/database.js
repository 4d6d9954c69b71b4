// The browser's database of one site, and promises in place of its events.

const VERSION = 2

/** The shapes so far: a page of an older version may have made the database. */
const SHAPES = [
  (/** @type {IDBDatabase} */ database) => {
    database.createObjectStore("events", { keyPath: "sequence" })
    database.createObjectStore("meta")
    database.createObjectStore("rounds", { keyPath: "round.id" })
  },
  (/** @type {IDBDatabase} */ database, /** @type {IDBTransaction} */ change) => {
    change.objectStore("events").createIndex("sample", "sample")
    database.createObjectStore("filters")
    database.createObjectStore("photos")
  },
]

/**
 * @param {string} name
 * @returns {Promise<IDBDatabase>}
 */
export async function open(name) {
  const opening = indexedDB.open(name, VERSION)
  opening.onupgradeneeded = ({ oldVersion }) => {
    const change = /** @type {IDBTransaction} */ (opening.transaction)
    SHAPES.slice(oldVersion).forEach((shape) => shape(opening.result, change))
  }
  const database = await asked(opening)
  // A newer page wants to change the shape: this one lets go, and says so at its next step.
  database.onversionchange = () => database.close()
  return database
}

/**
 * @template T
 * @param {IDBRequest<T>} request
 * @returns {Promise<T>}
 */
export function asked(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
}

/** @param {IDBTransaction} transaction */
export function done(transaction) {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve(undefined)
    transaction.onabort = () => reject(transaction.error)
  })
}
