/** Going to a place of the form, wherever it is folded away. */

const FIELDS = 'jw-number-field, jw-list-field, jw-text-field, jw-choice-field, jw-switch-field, select, input, button';

/**
 * Opens what is folded around an element and puts the focus on its first control.
 *
 * @param {?Element} place
 */
export function showPlace(place) {
  if (!place) return;
  for (let around = place.closest('details'); around; around = around.parentElement?.closest('details') ?? null)
    around.open = true;
  const field = place.querySelector(FIELDS);
  const control = field?.shadowRoot?.querySelector('input[type="text"], input, select') ?? field;
  place.scrollIntoView({block: 'center'});
  /** @type {?HTMLElement} */ (control)?.focus({preventScroll: true});
}
