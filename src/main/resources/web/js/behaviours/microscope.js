// The microscope page: starts once it has its filters and its log.

import { openMicroscope } from "#js/tally/page.js"

/** @param {HTMLElement} main */
export function start(main) {
  openMicroscope(main).catch((fault) => {
    console.warn("The microscope page does not start", fault)
    const place = main.querySelector("[data-trouble]")
    if (place) place.textContent = place.getAttribute("data-trouble")
  })
}
