/**
 * The element a selector finds, where there always is one.
 *
 * @param {ParentNode} root
 * @param {string} selector
 */
export const inside = (root, selector) => /** @type {HTMLElement} */ (root.querySelector(selector));
