/** What the tests read in the page, through every open shadow root. */
(() => {
  const roots = (root) => [
    root,
    ...[...root.querySelectorAll('*')].flatMap((one) => (one.shadowRoot ? roots(one.shadowRoot) : [])),
  ];

  /** All elements a selector matches, in whichever root. */
  const everywhere = (selector) => roots(document).flatMap((root) => [...root.querySelectorAll(selector)]);

  /** The colours an element is painted in. */
  const colours = (element) => {
    const {color, backgroundColor} = getComputedStyle(element);
    return {ink: color, ground: backgroundColor};
  };

  /** Every cell: where it is, what it prints, in which colours. */
  const cells = () =>
    everywhere('td[data-family][data-band]').map((cell) => ({
      family: cell.dataset.family,
      band: cell.dataset.band,
      text: cell.firstChild?.textContent.trim() ?? '',
      ...colours(cell),
    }));

  /** The printed margins and return losses in reading order; null where a word stands instead. */
  const numbers = () => cells().map(({text}) => (/\d/.test(text) && !text.startsWith('TE') ? text : null));

  /** The element that has the focus, whichever root it is in. */
  const focused = () => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    return active;
  };

  let shift = 0;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (!entry.hadRecentInput) shift += entry.value;
  }).observe({type: 'layout-shift', buffered: true});

  document.addEventListener('securitypolicyviolation', (event) => {
    window.noteViolation?.(`${event.violatedDirective} ${event.blockedURI}`);
  });

  window.readers = {everywhere, colours, cells, numbers, focused, shift: () => shift};
})();
