// Opens the round sheet: its log, its round, the exchange. The only file that knows all of them.

import { queue } from "#js/sync/outbox.js"
import { startSending } from "#js/sync/sender.js"
import { createApp } from "#js/walk/app.js"
import { openLog } from "#js/sync/log.js"
import { chooseRound } from "#js/walk/rounds.js"
import { fetchSheet } from "#js/walk/sheet.js"

/** @param {HTMLElement} main */
export async function openSheet(main) {
  const nursery = main.dataset.nursery ?? ""
  keepPage(nursery)
  if (new URLSearchParams(location.search).has("plain")) return
  const log = await openLog(nursery)
  const home = `/${nursery}/walk`
  const id = decodeURIComponent(location.pathname.slice(home.length + 1))
  if (id === "" || id === "shell") {
    if (!("list" in main.dataset)) await chooseRound(main, home, log)
    return
  }
  const address = `${home}/${encodeURIComponent(id)}/data`
  const sheet = (await fetchSheet(address, log)) ?? (await log.round(id))
  if (!sheet) throw new Error("This round is not on this phone")
  await run(main, log, sheet, address)
}

/**
 * @param {HTMLElement} main
 * @param {Awaited<ReturnType<typeof openLog>>} log
 * @param {any} sheet
 * @param {string} address
 */
async function run(main, log, sheet, address) {
  const app = await createApp(main, log, sheet)
  const renew = async () => {
    const fresh = await fetchSheet(address, log)
    if (fresh) await app.renew(fresh)
    return fresh !== undefined
  }
  const { send } = startSending(log, {
    address: `/${sheet.nursery}/events`,
    token: () => app.sheet().token,
    renew,
    told: async (answer) => {
      const state = await queue(log, app.now())
      // What other phones did in the meantime comes back with the round.
      if (answer.kind === "taken" && state.waiting === 0) await renew()
      app.foot(state, answer)
    },
  })
  app.onRecorded(async () => {
    app.foot(await queue(log, app.now()), { kind: "waiting" })
    send()
  })
  await send()
}

/**
 * A phone may throw away what a page keeps unless it is asked not to; and only over https or on
 * this machine does a page open without its server.
 *
 * @param {string} nursery
 */
function keepPage(nursery) {
  navigator.storage?.persist?.()
  const scope = `/${nursery}/walk`
  navigator.serviceWorker
    ?.register(scope + "/service-worker.js", { scope })
    .catch((fault) => console.info("This page does not open without the server", fault))
}
