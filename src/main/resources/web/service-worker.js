// Keeps a page for a device without a connection: the round sheet, or the microscope page. Before
// this text the server writes the version and the list of its files: all of them are stored, or
// none. Only the pages below its own address and their files are answered from here; everything
// else goes through untouched. A new version waits until the page is closed, and never changes it
// under the scout's hands.

const MINE = "kept " + self.registration.scope + " "
const CACHE = MINE + VERSION
const SHELL = self.registration.scope + "/shell"
const PATIENCE = 4000

self.addEventListener("install", (event) => event.waitUntil(store()))
self.addEventListener("activate", (event) => event.waitUntil(takeOver()))

self.addEventListener("fetch", (event) => {
  const { request } = event
  if (request.method !== "GET") return
  if (request.mode === "navigate") event.respondWith(page(request))
  else if (new URL(request.url).pathname.startsWith("/assets/")) event.respondWith(file(request))
})

async function store() {
  const cache = await caches.open(CACHE)
  // The shell is asked of the server anew: it belongs to this version as the files do.
  await cache.addAll([...FILES, new Request(SHELL, { cache: "reload" })])
}

async function takeOver() {
  for (const name of await caches.keys()) {
    if (name.startsWith(MINE) && name !== CACHE) await caches.delete(name)
  }
  await self.clients.claim()
}

/** The server's page where it can be reached, else the shell, which knows what is kept here. */
async function page(request) {
  try {
    return await fetch(request, { signal: AbortSignal.timeout(PATIENCE) })
  } catch (failure) {
    console.info("The page opens without the server", failure)
    return (await (await caches.open(CACHE)).match(SHELL)) ?? Response.error()
  }
}

async function file(request) {
  const kept = await (await caches.open(CACHE)).match(request.url)
  return kept ?? fetch(request)
}
