/** The colours of the page around the element: what it stands on, and whether that is dark. */

/** Relative luminance where black and white letters contrast alike, √(1.05 · 0.05) − 0.05 by the ratio of WCAG 2.2. */
const DARK = 0.179;
/** Of red, green and blue in relative luminance, WCAG 2.2. */
const WEIGHTS = [0.2126, 0.7152, 0.0722];
const OPACITY = 3;

/** A part of a colour of sRGB in proportion to its light, as WCAG 2.2 defines it. */
const linear = (part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);

/** Red, green, blue and opacity of a colour however it is written, from 0 to 1. */
function partsOf(colour) {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  return [...context.getImageData(0, 0, 1, 1).data].map((part) => part / 255);
}

/** What an element stands in; out of a shadow root its host. */
const around = (element) => element.parentElement ?? element.getRootNode().host;

/**
 * The ground an element stands on: the first one around it that covers what is behind; undefined where none does.
 *
 * @param {Element} element
 * @returns {{colour: string, isDark: boolean} | undefined}
 */
export function groundOf(element) {
  for (let one = element; one; one = around(one)) {
    const colour = getComputedStyle(one).backgroundColor;
    const parts = partsOf(colour);
    if (parts[OPACITY] < 1) continue;
    return {colour, isDark: WEIGHTS.reduce((sum, weight, at) => sum + weight * linear(parts[at]), 0) < DARK};
  }
  return undefined;
}

/**
 * Calls when the page around may have changed its colours: by the system's own switch, or by one of its own.
 *
 * @param {() => void} call
 * @returns {() => void} - ends it
 */
export function onColoursAround(call) {
  const system = matchMedia('(prefers-color-scheme: dark)');
  const own = new MutationObserver(call);
  for (const one of [document.documentElement, document.body])
    own.observe(one, {attributeFilter: ['class', 'style', 'data-theme']});
  system.addEventListener('change', call);
  return () => {
    own.disconnect();
    system.removeEventListener('change', call);
  };
}
