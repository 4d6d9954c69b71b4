// A form whose answer may take a while says so once it is sent, and is not sent twice.

/** @param {Element} form */
export function start(form) {
  let sent = false
  form.addEventListener("submit", (event) => {
    if (sent) event.preventDefault()
    sent = true
    const status = form.querySelector("[data-waiting]")
    if (status) status.textContent = status.getAttribute("data-waiting")
  })
  // Coming back to the page with the browser's own button makes the form new again.
  window.addEventListener("pageshow", () => {
    sent = false
  })
}
