// The answer to a form stands below it and changes as one types:
// <form data-behaviour="live-answer" data-answer="address" data-place="id of the answer">.
// Without a script the form's own button asks for the page with the answer.

import { startIn } from "#js/lib/behaviours.js"

const PAUSE = 300

/** @param {HTMLFormElement} form */
export function start(form) {
  const place = document.getElementById(form.getAttribute("data-place") ?? "")
  if (!place) return
  const asking = { timer: 0, number: 0 }

  form.addEventListener("input", () => askAfter(form, place, asking, PAUSE))
  form.addEventListener("submit", () => clearTimeout(asking.timer))
  waitWhileDrawing(form, place, asking)
}

/**
 * @param {HTMLFormElement} form
 * @param {HTMLElement} place
 * @param {{ timer: number, number: number }} asking
 * @param {number} pause
 */
function askAfter(form, place, asking, pause) {
  clearTimeout(asking.timer)
  asking.timer = window.setTimeout(() => ask(form, place, asking), pause)
}

/**
 * An answer to an older question that comes late is not shown.
 *
 * @param {HTMLFormElement} form
 * @param {HTMLElement} place
 * @param {{ timer: number, number: number }} asking
 */
async function ask(form, place, asking) {
  const number = ++asking.number
  const query = queryOf(form)
  place.setAttribute("aria-busy", "true")
  try {
    const answer = await fetch(`${form.getAttribute("data-answer")}?${query}`)
    const text = await answer.text()
    if (number !== asking.number) return
    if (!answer.ok) throw new Error(`The answer came with ${answer.status}`)
    show(place, text)
    history.replaceState(null, "", `${form.action}?${query}`)
    await startIn(place)
    waitWhileDrawing(form, place, asking)
  } catch (fault) {
    // the form's own button asks again, and shows what is wrong as a page
    console.warn(fault)
  } finally {
    if (number === asking.number) place.removeAttribute("aria-busy")
  }
}

/** @param {HTMLFormElement} form */
function queryOf(form) {
  const query = new URLSearchParams()
  for (const [name, value] of new FormData(form)) {
    if (typeof value === "string" && value !== "") query.append(name, value)
  }
  return query.toString()
}

/**
 * What the server wrote is a part of a page; its texts were escaped there. What is open stays open.
 *
 * @param {HTMLElement} place
 * @param {string} text
 */
function show(place, text) {
  const open = [...place.querySelectorAll("details")].map((details) => details.open)
  const part = new DOMParser().parseFromString(text, "text/html")
  place.replaceChildren(...part.body.children)
  place.querySelectorAll("details").forEach((details, i) => (details.open = open[i] ?? false))
}

/**
 * @param {HTMLFormElement} form
 * @param {HTMLElement} place
 * @param {{ timer: number, number: number }} asking
 */
function waitWhileDrawing(form, place, asking) {
  const drawing = place.querySelector("[data-again]")
  if (drawing) askAfter(form, place, asking, Number(drawing.getAttribute("data-again")))
}
