/** What the code on a label says. */
import {spokenCode} from '../shared/joints/identity.js';
import {levelsWith} from '../shared/state/levels.js';
import {isServed} from '../shared/station/web-address.js';

/** The address that opens a joint's derivation at its very power. */
export function codeText(address, {fragment}, levels) {
  const power = Number(new URLSearchParams(fragment).get('power_w'));
  const more = levelsWith(levels, power);
  return `${address}#${fragment}${more === levels ? '' : `&powers_w=${more.join(',')}`}`;
}

/** What opens a joint in the page. */
export const jointFragment = (code) => `view=fitout&joint=${code}`;

/** The address that opens a joint; where there is none that others can open, the joint's code in plain text. */
export const jointText = (address, code) =>
  isServed(address) ? `${address}#${jointFragment(code)}` : `Joint ${spokenCode(code)}`;
