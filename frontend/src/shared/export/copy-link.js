import {withUnits} from '../state/units.js';
import {unitsInForce} from '../text/measures.js';

/**
 * Copies the page's address, or another; resolves to a notice for the reader, with the link where it can't be copied.
 *
 * @param {string} [address]
 */
export async function copyLink(address = location.href) {
  const link = withUnits(address, unitsInForce());
  try {
    await navigator.clipboard.writeText(link);
    return {text: 'Link copied. It holds everything you set.', link: ''};
  } catch {
    return {text: 'Copy this link; it holds everything you set.', link};
  }
}
