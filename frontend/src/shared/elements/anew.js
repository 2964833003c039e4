import {nothing, render} from 'lit';

/**
 * Take away what an element has drawn and let it begin again from what it holds: as if it had just come into the page.
 *
 * @param {import('lit').LitElement} element
 */
export function drawAnew(element) {
  const place = document.createComment('');
  element.replaceWith(place);
  render(nothing, /** @type {HTMLElement} */ (element.renderRoot), element.renderOptions);
  place.replaceWith(element);
  element.requestUpdate();
}
