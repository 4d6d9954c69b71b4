// A form with one file: a file dropped on it is chosen and sent; what happens is said in words.

/** @param {Element} element the form */
export function start(element) {
  const form = /** @type {HTMLFormElement} */ (element)
  const input = /** @type {HTMLInputElement | null} */ (form.querySelector("input[type=file]"))
  if (!input) return

  form.addEventListener("dragover", (event) => {
    event.preventDefault()
    form.classList.add("drop-over")
  })
  form.addEventListener("dragleave", () => form.classList.remove("drop-over"))
  form.addEventListener("drop", (event) => {
    event.preventDefault()
    form.classList.remove("drop-over")
    if (event.dataTransfer && event.dataTransfer.files.length > 0) {
      input.files = event.dataTransfer.files
      form.requestSubmit()
    }
  })
  form.addEventListener("submit", () => sayWaiting(form))
}

/** @param {HTMLFormElement} form */
function sayWaiting(form) {
  const status = form.querySelector("[data-waiting]")
  if (status) status.textContent = status.getAttribute("data-waiting")
}
