// The round sheet: takes over from the plain forms once it has the round and its log.

import { openSheet } from "#js/walk/page.js"

/** @param {HTMLElement} main */
export function start(main) {
  openSheet(main).catch((fault) => {
    console.warn("The round sheet does not start", fault)
    const place = main.querySelector("[data-trouble]")
    if (place) place.textContent = place.getAttribute("data-trouble")
  })
}
