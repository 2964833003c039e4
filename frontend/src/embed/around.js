/** The colours of the page around the element: what it stands on, and whether that is dark. */

/** Relative luminance below which light letters are read better. */
const DARK = 0.18;

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
    const [red, green, blue, opacity] = partsOf(colour);
    if (opacity < 1) continue;
    return {colour, isDark: 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue) < DARK};
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
