/** Why a cell says what it says, out of the snapshot alone. */
import {LIMIT_LENGTH, takenLength} from '../shared/margins/bar.js';
import {byPurpose} from '../shared/margins/purposes.js';
import {stepOf} from '../shared/margins/scale.js';
import {decibels} from '../shared/text/format.js';
import {letters} from '../shared/text/letters.js';
import {el} from './dom.js';
import {mathElement} from './math.js';
import {quantityIn} from './words.js';

/** Steps can also be read without the drawing of a formula. */
const drawn = (formula) => mathElement(formula.mathml) ?? el('code', {}, formula.id);

function symbol(name) {
  const [letter, under] = letters(name);
  return el('var', {}, letter, under ? el('sub', {}, under) : undefined);
}

/** The steps of a chain, unpacked: {formula, purpose, inputs: [{value, source, kind}], result}. */
function unpacked({formulas, purposes, sources, kinds, values, steps, chains}, chain) {
  return chains[chain].map((at) => {
    const [formula, purpose, inputs, result] = steps[at];
    const given = inputs.map((one) => {
      const [value, source, kind] = values[one];
      return {value, source: sources[source], kind: kinds[kind]};
    });
    return {formula: formulas[formula], purpose: purposes[purpose], inputs: given, result};
  });
}

/** What each limit allows and leaves, cautious and generous end. */
function limitsOf({matrix, derivations}, f, c, power) {
  return matrix.limits.map((id, l) => {
    const steps = unpacked(derivations, derivations.cells[f][c][l]);
    const allowed = matrix[`${id}_allowed_w`][f][c];
    const [low, high] = allowed;
    const receiving = power === 0;
    const margins = allowed.map((watts) => (watts > 0 && !receiving ? 10 * Math.log10(watts / power) : null));
    const last = {
      formula: derivations.formulas[0],
      purpose: '',
      inputs: [{value: low}, {value: power}],
      result: margins[0],
    };
    return {
      id,
      margins,
      receiving,
      allowed: low === null ? undefined : [low, high],
      steps: margins[0] === null ? steps : [...steps, last],
    };
  });
}

function input(words, {symbol: name, meaning, unit}, {value, source, kind}) {
  const origin = [kind, source].filter(Boolean).join(': ');
  return el(
    'li',
    {},
    symbol(name),
    ` = ${quantityIn(words, value, unit)} `,
    el('small', {lang: 'en'}, meaning, origin ? ` (${origin})` : undefined),
  );
}

function step(words, {formula, purpose, inputs, result}) {
  return el(
    'li',
    {},
    el('p', {lang: 'en'}, el('strong', {}, formula.title), purpose ? ` ${purpose}` : undefined),
    el('div', {class: 'formula', tabindex: 0, role: 'group', 'aria-label': formula.title}, drawn(formula)),
    el(
      'ul',
      {},
      inputs.map((given, i) => input(words, formula.inputs[i], given)),
    ),
    el('p', {class: 'result'}, symbol(formula.result.symbol), ` = ${quantityIn(words, result, formula.result.unit)}`),
    el('p', {class: 'soft', lang: 'en'}, `${words.source}: ${formula.source}`),
  );
}

/** The share that the power has of the one allowed, as a bar with the limit across it. */
function bar(margin) {
  const taken = el('i', {'data-step': stepOf(margin)});
  taken.style.setProperty('--taken', takenLength(10 ** (-margin / 10)));
  const all = el('span', {class: 'share', 'aria-hidden': 'true'}, taken);
  all.style.setProperty('--limit', LIMIT_LENGTH);
  return all;
}

function limit(words, {id, margins: [low, high], allowed, receiving, steps}, binding) {
  const signed = (value) => words.number(decibels(value));
  const figures =
    low === null
      ? el('span', {class: 'soft'}, receiving ? words.receiving : '–')
      : [
          el('b', {'data-step': stepOf(low)}, `${signed(low)} dB`),
          el('span', {class: 'soft'}, words.range(signed(low), signed(high))),
        ];
  return el(
    'details',
    {'data-limit': id},
    el(
      'summary',
      {},
      el('strong', {}, words.limits[id]),
      binding ? el('span', {class: 'binds'}, words.binds) : undefined,
      figures,
      allowed ? el('span', {class: 'soft'}, words.allows(...allowed.map(words.level))) : undefined,
      low === null ? undefined : bar(low),
    ),
    byPurpose(steps, words.last).map((group) => derived(words, {}, [group.purpose], group.steps)),
  );
}

/** The demand on the match, whose chain of steps stands behind those of the limits. */
function match(words, {derivations, matrix, request}, cell, [f, c]) {
  const [low, high] = [cell.returnLoss, cell.returnLossHigh].map((db) =>
    db === null ? undefined : words.number(db.toFixed(1)),
  );
  return derived(
    words,
    {open: cell.refusedBy?.id === 'match', 'data-match': ''},
    [
      el('strong', {}, words.match),
      low === undefined
        ? el('span', {class: 'soft'}, '–')
        : [el('b', {'data-step': lookOf(cell)}, `${low} dB`), el('span', {class: 'soft'}, words.range(low, high))],
      el('span', {class: 'soft'}, words.asked(words.number(String(request.return_loss_asked_db)))),
    ],
    unpacked(derivations, derivations.cells[f][c][matrix.limits.length]),
  );
}

/** The match holds unless one of its two gates says otherwise; in doubt it has no look. */
function lookOf({refusedBy, marks}) {
  if (refusedBy?.id === 'match') return 'refused';
  return marks.some(({id}) => id === 'match_doubt') ? undefined : 'holds';
}

function derived(words, properties, summary, steps) {
  return el(
    'details',
    properties,
    el('summary', {}, summary),
    el(
      'ol',
      {},
      steps.map((one) => step(words, one)),
    ),
  );
}

/**
 * The derivation of a cell.
 *
 * @param {import('./snapshot.js').Snapshot} snapshot
 * @param {import('../shared/margins/reading.js').MatrixCell} cell
 * @param {[number, number]} at - row and column
 * @param {import('./words.js').Words} words
 * @param {string | undefined} link - where the full page shows it, if there is one
 * @param {() => void} close
 */
export function derivation(snapshot, cell, [f, c], words, link, close) {
  const {gate_reasons: reasons} = cell.family;
  const failed = [cell.refusedBy, ...cell.marks].filter((gate) => gate !== undefined);
  const bindingFirst = limitsOf(snapshot, f, c, cell.power).sort(
    (one, other) => Number(other.id === cell.limit) - Number(one.id === cell.limit),
  );
  return el(
    'div',
    {class: 'derivation', role: 'group', 'aria-labelledby': 'heading'},
    el(
      'div',
      {class: 'head'},
      el('h3', {id: 'heading', tabindex: -1}, `${cell.family.name} · ${cell.column.name} · ${words.level(cell.power)}`),
      el('button', {class: 'close', onclick: close}, words.close),
    ),
    el(
      'p',
      {class: 'verdict'},
      words.verdict(cell),
      ' ',
      cell.refusedBy ? undefined : words.largest(cell),
      ' ',
      el('span', {class: 'soft'}, words.at(cell.column)),
    ),
    failed.length === 0
      ? undefined
      : el(
          'ul',
          {class: 'failed', lang: 'en'},
          failed.map((gate) => el('li', {}, `${gate.name}: ${reasons[gate.id] ?? ''}`)),
        ),
    bindingFirst.map((one) => limit(words, one, one.id === cell.limit)),
    match(words, snapshot, cell, [f, c]),
    el(
      'details',
      {},
      el('summary', {}, words.cautions),
      el(
        'ul',
        {lang: 'en'},
        snapshot.cautions.map((one) => el('li', {}, one)),
      ),
    ),
    link ? el('p', {}, el('a', {href: link, target: '_blank', rel: 'noopener'}, words.full)) : undefined,
  );
}
