// Moves benches of a drawn house with the arrow keys. What is saved is the form: a key press
// changes the bench's number fields, as typing into them moves the bench.

/**
 * @typedef {{ scale: number, length: number, width: number }} Floor px a metre, metres
 * @typedef {{ x: number, y: number, length: number, width: number }} Place metres
 */

/** @type {Record<string, [number, number]>} */
const ARROWS = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}

/** @param {HTMLElement} form */
export function start(form) {
  const unit = Number(form.dataset.unit)
  const ground = form.querySelector("[data-scale]")
  if (!ground) return
  const floor = {
    scale: Number(ground.getAttribute("data-scale")),
    length: Number(ground.getAttribute("data-length")),
    width: Number(ground.getAttribute("data-width")),
  }
  form.querySelector("[data-help]")?.removeAttribute("hidden")
  for (const bench of /** @type {NodeListOf<SVGGElement>} */ (
    form.querySelectorAll(".draft-bench")
  )) {
    startBench(form, bench, floor, unit)
  }
}

/**
 * @param {HTMLElement} form
 * @param {SVGGElement} bench
 * @param {Floor} floor
 * @param {number} unit metres
 */
function startBench(form, bench, floor, unit) {
  const fields = fieldsOf(form, bench.dataset.place ?? "")
  const drawn = placeIn(fields, unit)
  bench.setAttribute("tabindex", "0")
  bench.setAttribute("role", "button")
  bench.setAttribute("aria-roledescription", form.dataset.role ?? "")
  bench.setAttribute("aria-label", bench.dataset.name ?? "")

  const draw = () => {
    const place = placeIn(fields, unit)
    if (![place.x, place.y].every(Number.isFinite)) return
    const right = (place.x - drawn.x) * floor.scale
    const down = (place.y - drawn.y) * floor.scale
    bench.setAttribute("transform", `translate(${right} ${down})`)
  }
  fields.x.addEventListener("input", draw)
  fields.y.addEventListener("input", draw)
  bench.addEventListener("keydown", (event) => {
    const arrow = ARROWS[event.key]
    if (!arrow || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    const place = placeIn(fields, unit)
    const step = Number(form.dataset.step)
    fields.x.value = written(within(place.x + arrow[0] * step, floor.length - place.length) / unit)
    fields.y.value = written(within(place.y + arrow[1] * step, floor.width - place.width) / unit)
    draw()
    say(form, bench.dataset.name ?? "", fields)
  })
}

/**
 * @param {HTMLElement} form
 * @param {string} place
 */
function fieldsOf(form, place) {
  const field = (/** @type {string} */ name) =>
    /** @type {HTMLInputElement} */ (form.querySelector(`[name="${name}-${place}"]`))
  return { x: field("x"), y: field("y"), length: field("length"), width: field("width") }
}

/**
 * @param {ReturnType<typeof fieldsOf>} fields
 * @param {number} unit metres
 * @returns {Place}
 */
function placeIn(fields, unit) {
  const metres = (/** @type {HTMLInputElement} */ field) =>
    Number(field.value.replace(",", ".")) * unit
  return {
    x: metres(fields.x),
    y: metres(fields.y),
    length: metres(fields.length),
    width: metres(fields.width),
  }
}

/**
 * @param {number} value
 * @param {number} most
 */
const within = (value, most) => Math.max(0, Math.min(Math.max(0, most), value))

/** @param {number} value two decimals, with the sign of the page's language */
function written(value) {
  const text = String(Math.round(value * 100) / 100)
  return document.documentElement.lang === "en" ? text : text.replace(".", ",")
}

/**
 * @param {HTMLElement} form
 * @param {string} name
 * @param {ReturnType<typeof fieldsOf>} fields
 */
function say(form, name, fields) {
  const status = form.querySelector("[data-said]")
  if (!status) return
  status.textContent = (form.dataset.say ?? "")
    .replace("{0}", name)
    .replace("{1}", fields.x.value)
    .replace("{2}", fields.y.value)
}
