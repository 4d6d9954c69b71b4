// Asks once more before a form is sent; without a script it is sent at once and can be set again.

/** @param {Element} form */
export function start(form) {
  form.addEventListener("submit", (event) => {
    const question = form.getAttribute("data-question") ?? ""
    if (!window.confirm(question)) event.preventDefault()
  })
}
