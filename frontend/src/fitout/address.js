/** The address that the codes on labels lead to, kept in this browser where it lets us. */

const KEY = 'jointwise-address';
const LONGEST = 200;
const SCHEMES = ['http:', 'https:'];

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

/** The address that was kept; empty where none was, or where it can't be read. */
export function recalledAddress(storage) {
  try {
    const kept = storage().getItem(KEY) ?? '';
    return refusalOf(kept) === '' ? kept : '';
  } catch {
    return '';
  }
}

/** Keeps the address; false where the browser keeps nothing. */
export function rememberAddress(storage, address) {
  try {
    storage().setItem(KEY, address);
    return true;
  } catch {
    return false;
  }
}
