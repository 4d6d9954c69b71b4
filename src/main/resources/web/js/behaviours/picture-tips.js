// Shows the values of a mark beside it: <figure data-behaviour="picture-tips"> around a picture
// whose marks are <g><title>values</title>…</g>. The same values stand in the table behind the
// picture, for those who do not point. Escape takes a tip away without moving the pointer.

/** @param {HTMLElement} figure */
export function start(figure) {
  const tip = document.createElement("div")
  tip.className = "tip"
  tip.hidden = true
  tip.setAttribute("aria-hidden", "true")
  figure.classList.add("tip-ground")
  figure.append(tip)

  for (const title of figure.querySelectorAll("svg g > title")) {
    const mark = title.parentElement
    const values = title.textContent ?? ""
    if (!mark || values === "") continue
    // the browser's own tip would lie over ours
    title.remove()
    mark.addEventListener("pointerenter", () => show(figure, tip, mark, values))
    mark.addEventListener("pointerleave", () => (tip.hidden = true))
  }

  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape") tip.hidden = true
  })
}

/**
 * @param {HTMLElement} figure
 * @param {HTMLElement} tip
 * @param {Element} mark
 * @param {string} values
 */
function show(figure, tip, mark, values) {
  tip.textContent = values
  tip.hidden = false
  const ground = figure.getBoundingClientRect()
  const place = mark.getBoundingClientRect()
  const middle = place.left + place.width / 2 - ground.left
  const farthest = ground.width - tip.offsetWidth
  const left = Math.max(0, Math.min(farthest, middle + 14))
  const top = Math.max(0, place.top - ground.top - tip.offsetHeight - 6)
  tip.style.left = `${left}px`
  tip.style.top = `${top}px`
}
