/** Where the page stands on the web: links and codes lead there when it is opened from a file. */

const LONGEST = 200;
const SCHEMES = ['http:', 'https:'];
/** Where the address was kept before it was the station's. */
const OLD_KEY = 'jointwise-address';

/** The page's own address without what it is about. */
export const ownAddress = ({href}) => href.replace(/[?#].*$/, '');

/** Whether an address is one that other devices can open. */
export const isServed = (address) => URL.canParse(address) && SCHEMES.includes(new URL(address).protocol);

/** Why an address can't be taken, in a sentence; empty when it can. */
export function refusalOf(address) {
  if (address === '' || (address.length <= LONGEST && isServed(address) && !address.includes('#'))) return '';
  const allowed = `a web address with its http or https, without “#”, up to ${LONGEST} characters`;
  return `Address of the page is “${address}”; allowed: ${allowed}.`;
}

/** The address that an older version kept; empty where none was, or where it can't be read. */
export function recalledAddress(storage) {
  try {
    const kept = storage().getItem(OLD_KEY) ?? '';
    return refusalOf(kept) === '' ? kept : '';
  } catch {
    return '';
  }
}

/** The address that links lead to: the station's where there is one, else where the page is. */
export const addressOf = (station, place) => station.address || ownAddress(place);
