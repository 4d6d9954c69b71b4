// Starts the behaviours that a part of a page asks for: <form data-behaviour="drop-file">.
// A behaviour is a module #js/behaviours/<name>.js that exports start(element).

/** @param {ParentNode} part */
export async function startIn(part) {
  for (const element of part.querySelectorAll("[data-behaviour]")) {
    for (const name of (element.getAttribute("data-behaviour") ?? "").split(" ")) {
      const behaviour = await import(`#js/behaviours/${name}.js`)
      behaviour.start(element)
    }
  }
}
