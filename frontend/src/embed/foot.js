/**
 * What stands below an embedded matrix: the caution, what is being done, conditions, marks, the way to the full page.
 *
 * @import {Snapshot} from './snapshot.js'
 * @import {Words} from './words.js'
 */
import {LOWER_FROM_MEMORY, UNCERTAIN, letterOf, refusedWord} from '../shared/margins/reading.js';
import {el} from './dom.js';
import {conditionsIn} from './words.js';

function marks(words, {gates}) {
  /**
   * @param {string} mark
   * @param {string} text
   * @param {string} [lang]
   */
  const row = (mark, text, lang) => el('li', {lang}, el('b', {}, mark), el('span', {}, text));
  return el(
    'ul',
    {class: 'marks-list'},
    row(UNCERTAIN, words.undecided),
    row(LOWER_FROM_MEMORY, words.lowerFromMemory),
    row('RL 26', words.holds),
    gates.map((gate) =>
      gate.id === 'match'
        ? row(refusedWord(gate), words.missed)
        : row(gate.hard ? (words.words[gate.id] ?? refusedWord(gate)) : letterOf(gate), gate.name, 'en'),
    ),
  );
}

const conditions = (words, snapshot) =>
  el(
    'ul',
    {class: 'conditions'},
    conditionsIn(words, snapshot).map(([label, value]) => el('li', {}, `${label}: ${value}`)),
  );

const folded = (heading, inside) => el('details', {}, el('summary', {}, heading), inside);

/**
 * All of it takes the same room before there is a snapshot, so that nothing moves when it comes.
 *
 * @param {Words} words
 * @param {{link: string | undefined, status: string, snapshot: Snapshot | undefined}} shown
 */
export function foot(words, {link, status, snapshot}) {
  return el(
    'div',
    {class: 'foot'},
    el('p', {class: 'caution'}, words.caution),
    el('p', {class: 'status soft', role: 'status'}, status),
    folded(words.conditions, snapshot && conditions(words, snapshot)),
    folded(words.marks, snapshot && marks(words, snapshot.matrix)),
    link ? el('p', {class: 'ends'}, el('a', {href: link, target: '_blank', rel: 'noopener'}, words.full)) : undefined,
  );
}
