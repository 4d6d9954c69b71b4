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
