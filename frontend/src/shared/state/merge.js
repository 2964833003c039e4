/** What two tabs made of one list that the browser keeps. */

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/** Items by key, the second of a key under another one. */
function byKey(list, keyOf) {
  const items = new Map();
  for (const item of list) {
    let key = keyOf(item);
    while (items.has(key)) key += '\n';
    items.set(key, item);
  }
  return items;
}

/**
 * The list with what either changed since `base`; nothing that one of them has and the other did not take away is lost.
 * What both changed stands twice, where `both` names the other's anew, or is this tab's.
 *
 * @template Item
 * @param {{base: Item[], mine: Item[], theirs: Item[]}} lists
 * @param {(item: Item) => string} keyOf
 * @param {(theirs: Item, taken: (key: string) => boolean) => Item | undefined} [both]
 * @returns {Item[]} - in this tab's order, the other's own at the end
 */
export function mergedLists({base, mine, theirs}, keyOf, both = () => undefined) {
  const [before, here, there] = [base, mine, theirs].map((list) => byKey(list, keyOf));
  const keys = new Set([...mine, ...theirs].map(keyOf));
  const taken = (key) => keys.has(key);
  const merged = [];
  for (const key of new Set([...here.keys(), ...there.keys()])) {
    const [was, own, other] = [before.get(key), here.get(key), there.get(key)];
    if (same(own, was)) merged.push(other);
    else if (same(other, was) || same(own, other)) merged.push(own);
    else if (own === undefined || other === undefined) merged.push(own ?? other);
    else merged.push(own, both(other, taken));
  }
  return merged.filter((item) => item !== undefined);
}

/**
 * A name like this one that is not taken: "Field day (2)".
 *
 * @param {string} name
 * @param {(name: string) => boolean} taken
 * @param {number} longest
 */
export function freeName(name, taken, longest) {
  for (let number = 2; ; number++) {
    const mark = ` (${number})`;
    const one = name.slice(0, longest - mark.length) + mark;
    if (!taken(one)) return one;
  }
}
