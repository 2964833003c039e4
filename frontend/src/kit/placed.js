/** Where a refusal of the core belongs in the form, and how it is said there. */
import {refusedWords} from '../shared/fields/refused.js';

/** {group, at, field} of a refusal's path, such as "ports[2].family"; group is ports, owned, pairs or limits, empty where it names none. */
export function placeOf(refusal) {
  const path = refusal?.field ?? '';
  const part = /^(ports|owned)\[(\d+)\](?:\.(\w+))?/.exec(path);
  if (part) return {group: part[1], at: Number(part[2]), field: part[3] ?? ''};
  if (/^pairs\b/.test(path)) return {group: 'pairs', field: ''};
  return {group: path === '' ? '' : 'limits', field: path};
}

const GROUPS = {ports: 'port', owned: 'owned', limits: 'kit'};

/** {group, at, field, message}, the sentence with port and field named as the reader knows them. */
export function placed(refusal, names, labelOf) {
  if (!refusal) return undefined;
  const place = placeOf(refusal);
  const label = labelOf(`${GROUPS[place.group]}.${place.field}`) ?? place.field;
  const what = {
    ports: `Port ${place.at + 1}, ${names[place.at]}: ${label}`,
    owned: `Adapter ${place.at + 1}: ${label}`,
    limits: label,
  }[place.group];
  return {...place, message: refusedWords(refusal, what)};
}
