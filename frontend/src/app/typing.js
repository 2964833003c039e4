/** Whether a field is being typed in: a key then belongs to the field, not to the page. */

const isText = (node) =>
  node instanceof HTMLElement && node.matches('textarea, input:not([type]), input[type="text"], input[type="url"]');

/**
 * Follows what is typed on the page: from the first letter until the field gives its value, or loses the focus.
 *
 * @param {EventTarget} page
 */
export function typingOn(page) {
  /** @type {EventTarget | undefined} */
  let typed;
  page.addEventListener('input', (event) => (typed = event.composedPath()[0]));
  // a change stays inside its own tree, but the page's fields tell of it
  page.addEventListener('jw-change', () => (typed = undefined), true);
  page.addEventListener('focusout', () => (typed = undefined));
  /** @param {Event} event */
  return (event) => isText(event.composedPath()[0]) && event.composedPath()[0] === typed;
}
