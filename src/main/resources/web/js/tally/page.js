// Opens the microscope page: its log, its filters, the exchange. The only file that knows all.

import { withClock } from "#js/lib/clock.js"
import { queue } from "#js/sync/outbox.js"
import { startSending } from "#js/sync/sender.js"
import { openLog } from "#js/sync/log.js"
import { createApp } from "#js/tally/app.js"
import { holdAlone } from "#js/tally/alone.js"
import { sendPhotos } from "#js/tally/photos.js"

/** Presses are sent in bunches: nobody waits for them, and each bunch is one request. */
const PATIENCE = 1500

/** @param {HTMLElement} main */
export async function openMicroscope(main) {
  const nursery = main.dataset.nursery ?? ""
  const home = `/${nursery}/microscope`
  keepPage(home)
  const log = await openLog(nursery)
  const sheet = (await fetchFilters(home, log)) ?? (await log.filters())
  if (!sheet) throw new Error("No filters are on this device")
  await holdAlone(nursery, main, sheet, () => run(main, log, sheet, home))
}

/**
 * @param {HTMLElement} main
 * @param {any} log
 * @param {any} sheet
 * @param {string} home
 */
async function run(main, log, sheet, home) {
  const app = await createApp(main, log, sheet)
  const renew = async () => {
    const fresh = await fetchFilters(home, log)
    if (fresh) await app.renew(fresh)
    return fresh !== undefined
  }
  const { send } = startSending(log, {
    address: `/${sheet.nursery}/events`,
    token: () => app.sheet().token,
    renew,
    told: async (answer) => {
      app.answered(answer)
      const { waiting } = await queue(log, app.now())
      if (answer.kind === "taken" && waiting === 0) {
        await sendPhotos(log, `/${sheet.nursery}/photos`, app.sheet().token)
      }
    },
  })
  let timer = 0
  app.recorded = () => {
    clearTimeout(timer)
    timer = setTimeout(send, PATIENCE)
  }
  app.refresh = renew
  await keepAwake()
  await send()
}

/**
 * @param {string} home
 * @param {any} log
 * @returns {Promise<any | undefined>} undefined where the server cannot be reached
 */
async function fetchFilters(home, log) {
  try {
    const answer = await fetch(home + "/data", { signal: AbortSignal.timeout(8000) })
    if (!answer.ok) return undefined
    const sheet = withClock(await answer.json())
    await log.keepFilters(sheet)
    return sheet
  } catch (failure) {
    console.info("The filters as they were last kept here", failure)
    return undefined
  }
}

/** A page that may open without its server, and whose counts the browser does not throw away. */
function keepPage(/** @type {string} */ home) {
  navigator.storage?.persist?.()
  navigator.serviceWorker
    ?.register(home + "/service-worker.js", { scope: home })
    .catch((fault) => console.info("This page does not open without the server", fault))
}

/** A screen that goes dark takes the keyboard with it. */
async function keepAwake() {
  const ask = () =>
    navigator.wakeLock
      ?.request("screen")
      .catch((/** @type {any} */ fault) => console.info("The screen may go dark", fault))
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") ask()
  })
  await ask()
}
