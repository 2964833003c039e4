/** Lets the keyboard scroll those of the elements that are too wide for their place, and skips the others. */
export function reachable(elements) {
  for (const element of elements) {
    if (element.scrollWidth > element.clientWidth) element.tabIndex = 0;
    else element.removeAttribute('tabindex');
  }
}
