// Starts the behaviours that a page asks for: <form data-behaviour="drop-file">.
// A behaviour is a module #js/behaviours/<name>.js that exports start(element).

for (const element of document.querySelectorAll("[data-behaviour]")) {
  for (const name of (element.getAttribute("data-behaviour") ?? "").split(" ")) {
    const behaviour = await import(`#js/behaviours/${name}.js`)
    behaviour.start(element)
  }
}
