// Makes elements; text goes in as text.

const SVG = "http://www.w3.org/2000/svg"

/** @typedef {Record<string, string | number | boolean | ((event: any) => void)>} Attributes */

/**
 * @param {string} name
 * @param {Attributes} [attributes] those that begin with "on" are listened to
 * @param {...(Node | string | null)} children
 * @returns {HTMLElement}
 */
export function el(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children)
}

/**
 * @param {string} name
 * @param {Attributes} [attributes]
 * @param {...(Node | string | null)} children
 * @returns {SVGElement}
 */
export function svg(name, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, name), attributes, children)
}

/**
 * Puts new children in the places of old ones. What is the same stays as it is: a browser draws
 * only what was changed.
 *
 * @param {Element} parent
 * @param {...(Node | string)} children
 */
export function renew(parent, ...children) {
  const old = [...parent.childNodes]
  const fresh = children.map((child) => (child instanceof Node ? child : new Text(child)))
  fresh.forEach((child, i) => {
    if (!old[i]) parent.append(child)
    else if (!old[i].isEqualNode(child)) old[i].replaceWith(child)
  })
  old.slice(fresh.length).forEach((node) => node.remove())
}

/**
 * @template {Element} E
 * @param {E} element
 * @param {Attributes} attributes
 * @param {(Node | string | null)[]} children
 */
function filled(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") element.addEventListener(name.slice(2), value)
    else if (value === true) element.setAttribute(name, "")
    else if (value !== false) element.setAttribute(name, String(value))
  }
  element.append(...children.filter((child) => child !== null))
  return element
}
