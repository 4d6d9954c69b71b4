// Finds that are kept: each with its number, its cell and a photo.

import { el } from "#js/lib/dom.js"
import { smallPhoto } from "#js/tally/photos.js"

/**
 * @param {any} app
 * @param {import("#js/tally/counting.js").Counting} counting
 */
export function vouchersPart(app, counting) {
  const list = el("ol", { class: "tally-list" })
  const said = el("p", { role: "status" })
  draw()
  const caution = el("p", { class: "tally-note" }, app.say("tally.vouchers.caution"))
  return el("section", {}, el("h3", {}, app.say("tally.vouchers")), list, said, caution)

  function draw() {
    const { vouchers, photos } = counting.state().filter
    if (vouchers.length === 0) said.textContent = app.say("tally.vouchers.none")
    list.replaceChildren(
      ...vouchers.map((voucher) => {
        const { number, filter_cell: cell } = voucher.deed
        const pictures = photos.filter(
          ({ deed }) =>
            deed.voucher.device === voucher.device && deed.voucher.sequence === voucher.sequence,
        )
        const words = app.say("tally.vouchers.one", number, cell, pictures.length)
        return el("li", {}, el("span", {}, words), photoButton(voucher))
      }),
    )
  }

  function photoButton(/** @type {any} */ voucher) {
    const file = el("input", { type: "file", accept: "image/*", capture: "environment" })
    file.addEventListener("change", async () => {
      const chosen = /** @type {HTMLInputElement} */ (file).files?.[0]
      if (chosen) await keep(voucher, chosen)
    })
    return el("label", { class: "tally-plain tally-photo" }, app.say("tally.vouchers.photo"), file)
  }

  /** The photo goes to the disk first, then the event that names it. */
  async function keep(/** @type {any} */ { device, sequence }, /** @type {Blob} */ chosen) {
    if (!globalThis.isSecureContext) return tell("plain")
    try {
      const { hash, photo } = await smallPhoto(chosen)
      await app.log.keepPhoto(hash, photo)
      const voucher = { device, sequence }
      const deed = { deed: "photo_taken", voucher, sha256: hash, bytes: photo.size }
      if (!(await counting.record([deed]))) return tell("not-kept")
      app.recorded()
      draw()
      tell("kept")
    } catch (fault) {
      console.warn("No photo", fault)
      tell("not-kept")
    }
  }

  function tell(/** @type {string} */ key) {
    said.textContent = app.say("tally.vouchers." + key)
  }
}
