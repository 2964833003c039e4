/** Elements made without markup: nothing here is parsed, so no text can become more than text. */

/**
 * An element; properties beginning with "on" are listeners, the others attributes: false and undefined leave one out.
 *
 * @param {string} name
 * @param {Record<string, any>} [properties]
 * @param {...(Node | string | undefined | any[])} children - lists of them, too
 */
export function el(name, properties = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(properties)) {
    if (key.startsWith('on')) made.addEventListener(key.slice(2), value);
    else if (value !== undefined && value !== false) made.setAttribute(key, value === true ? '' : value);
  }
  made.append(...children.flat(Infinity).filter((child) => child !== undefined));
  return made;
}
