/**
 * What the core answers about adapters, as far as the page reads it.
 *
 * @typedef {object} Ends - of an adapter or a joint
 * @property {string} one_family
 * @property {string} one_gender
 * @property {string} other_family
 * @property {string} other_gender
 *
 * @typedef {object} Chain - the adapters between two ports in order, none where they mate as they are
 * @property {Ends[]} adapters
 * @property {(Ends & {notes: string[]})[]} joints
 * @property {?number} margin_db - the smallest of its joints; null in receive
 * @property {number} return_loss_db - of all its joints at worst
 * @property {number} loss_db
 *
 * @typedef {object} Pair - of ports that must join
 * @property {[number, number]} ports
 * @property {number} frequency_hz
 * @property {number} power_w
 * @property {?Chain} joined - with the whole kit
 * @property {?Chain} joined_by_owned
 * @property {string} sentence - why it can't be joined
 * @property {string} trap - what comes of mating the two as they are, where it looks as if they would; else empty
 *
 * @typedef {object} Answer
 * @property {string} goal - fewest or best_joints
 * @property {(Ends & {name: string, count: number, kind: string, pack: string, stated: string})[]} adapters - to add
 * @property {number} added
 * @property {number} gap - how many more these are than the best possible, at most
 * @property {boolean} optimal
 * @property {Pair[]} pairs
 * @property {number} joined
 * @property {{goal: string, added: number, optimal: boolean, sentence: string}} price - of the other goal
 * @property {string} headline
 * @property {string} verdict - begins with the headline
 * @property {string[]} cautions
 */
export {};
