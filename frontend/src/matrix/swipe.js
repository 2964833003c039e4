/** A finger drawn sideways over an element. */

/** Shorter is a tap that slipped. */
const LEAST_PX = 48;
/** How much wider than high a stroke is that is meant sideways. */
const FLAT = 2;

/**
 * Calls with 1 for a stroke to the left, which brings what comes next, and with -1 for one to the right.
 *
 * @param {HTMLElement} element
 * @param {(step: 1 | -1) => void} call
 */
export function onSwipe(element, call) {
  let begun;
  element.addEventListener('pointerdown', ({clientX: x, clientY: y, pointerType}) => {
    begun = pointerType === 'touch' ? {x, y} : undefined;
  });
  element.addEventListener('pointercancel', () => (begun = undefined));
  element.addEventListener('pointerup', ({clientX, clientY}) => {
    if (!begun) return;
    const [across, down] = [clientX - begun.x, clientY - begun.y];
    begun = undefined;
    if (Math.abs(across) >= LEAST_PX && Math.abs(across) > FLAT * Math.abs(down)) call(across < 0 ? 1 : -1);
  });
}
