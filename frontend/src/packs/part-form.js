/** The controls of a part of a pack, made of what the core declares of its fields. */
import {css, html, nothing} from 'lit';
import {control} from '../shared/fields/control.js';
import {chips} from './chips.js';
import {rangeFault} from './faults.js';
import {at, word} from './paths.js';
import {ENDS, HANDLED} from './shapes.js';

/**
 * @import {TemplateResult} from 'lit'
 * @import {Entry} from '../shared/answers.js'
 * @import {Vocabulary} from '../shared/vocabulary/vocabulary.js'
 * @import {PackDocument} from './entries.js'
 * @import {Path} from './paths.js'
 * @import {Facts, Shapes} from './shapes.js'
 *
 * @typedef {object} Desk - where the document is worked on
 * @property {Shapes} shapes
 * @property {PackDocument} document
 * @property {Vocabulary} vocabulary
 * @property {(table: string) => Entry[]} entriesOf - those that can be chosen
 * @property {(path: Path) => string} faultAt - a sentence; empty where nothing is wrong
 * @property {(path: Path, value: any) => void} putFigure - at a sourced value
 * @property {(path: Path, value: any) => void} putField
 * @property {(path: Path, part: string) => void} addRow - to a table
 * @property {(path: Path, part: string) => void} addPart - where it was left out
 */

export const partStyles = css`
  .controls {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: var(--space-2) var(--space-4);
    align-items: start;
  }
  .controls > .across { grid-column: 1 / -1; min-width: 0; }
  .control { min-width: 0; }
  .control .hint { margin: calc(-1 * var(--space-half)) 0 var(--space-1); }
  .row {
    padding: var(--space-2) 0; border-top: 1px solid var(--line);
    grid-template-columns: repeat(auto-fit, minmax(110px, 1fr));
  }
  .row > .across { grid-column: auto; }
  .row > .remove { margin-top: 1.2rem; }
  .part { padding: var(--space-2) 0 var(--space-1) var(--space-3); border-left: 3px solid var(--line); }
  .tools { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-1); }
  @media (max-width: 480px) {
    .controls { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    .row > .across { grid-column: 1 / -1; }
  }
`;

const WIDE = new Set(['list', 'map', 'part']);

/** A text of several words takes the whole width. */
const LONG_TEXT = 100;
const isLong = (facts) => WIDE.has(facts.type) || (facts.type === 'text' && !facts.table && facts.longest > LONG_TEXT);

/**
 * A control with what is said of it, as an element that a fault can be found at.
 *
 * @param {Desk} desk
 * @param {Path} path
 * @param {Facts} facts
 * @param {any} inside
 */
const framed = (desk, path, facts, inside) => {
  const fault = desk.faultAt(path);
  return html`<div class=${isLong(facts) ? 'control across' : 'control'} data-place=${word(path)}>
    ${inside}
    ${facts.hint && !WIDE.has(facts.type) ? html`<span class="hint">${facts.hint}</span>` : nothing}
    ${fault ? html`<p class="error">${fault}</p>` : nothing}
  </div>`;
};

/**
 * A control of the page's, by the name the vocabulary has for it.
 *
 * @param {Desk} desk
 * @param {string} name
 * @param {any} value
 * @param {(value: any) => void} put
 * @param {string} [error]
 */
const typed = ({vocabulary}, name, value, put, error) => {
  const empty = vocabulary.fieldOf(name).type === 'text' ? '' : null;
  const take = (event) => {
    event.stopPropagation();
    put(Object.values(event.detail.changes)[0]);
  };
  return html`<div @jw-change=${take}>${control(vocabulary, name, value ?? empty, error)}</div>`;
};

/** A number, which the core has not seen yet. */
const counted = (desk, name, facts, value, put) =>
  typed(desk, name, value, put, rangeFault(facts, value, desk.vocabulary.labelOf(name) ?? ''));

/**
 * One entry of a table that packs add to.
 *
 * @param {Desk} desk
 * @param {Facts} facts
 * @param {any} value
 * @param {Path} path
 * @param {(id: string) => void} put
 */
function named(desk, {label, required = false, table}, value, path, put) {
  const id = word(path);
  const entries = desk.entriesOf(String(table));
  const isListed = !value || entries.some((one) => one.id === value);
  return html`<label class="label" for=${id}>${label}</label>
    <select id=${id} @change=${({target}) => put(target.value)}>
      <option value="" .selected=${!value} ?disabled=${required}>${required ? 'choose…' : 'not given'}</option>
      ${entries.map((one) => html`<option value=${one.id} .selected=${one.id === value}>${one.name}</option>`)}
      ${isListed ? nothing : html`<option value=${value} selected>${value}</option>`}
    </select>`;
}

/** @param {Desk} desk @param {Facts} facts @param {Path} path */
function rowsOf(desk, {label, hint, of, most = Infinity}, path) {
  const rows = at(desk.document, path);
  const listed = Array.isArray(rows) ? rows : [];
  return html`<div class="table" role="group" aria-label=${label}>
    <h4>${label} <small>${hint}</small></h4>
    ${listed.map(
      (_, index) => html`<div class="row controls" role="group" aria-label="${label} ${index + 1}">
        ${shown(desk, of.of).map((name) => fieldOf(desk, of.of, name, [...path, index, name]))}
        <button type="button" class="remove" @click=${() => desk.putField([...path, index], undefined)}>Remove <span
          class="unseen">${label} ${index + 1}</span></button>
      </div>`,
    )}
    <div class="tools">
      <button type="button" ?disabled=${listed.length >= most} @click=${() => desk.addRow(path, of.of)}>Add a row <span
        class="unseen">to ${label}</span></button>
      ${
        listed.length > 1
          ? html`<button type="button" @click=${() => desk.putField(path, [])}>Remove all rows <span class="unseen">of
            ${label}</span></button>`
          : nothing
      }
    </div>
  </div>`;
}

/** @param {Desk} desk @param {Facts} facts @param {Path} path @param {string} label */
function optional(desk, {hint, of}, path, label) {
  const isThere = (at(desk.document, path) ?? null) !== null;
  return html`<div class="part" role="group" aria-label=${label}>
    <h4>${label} <small>${hint}</small></h4>
    ${isThere ? fieldsOf(desk, of.of ?? of, path) : nothing}
    <div class="tools">
      ${
        isThere
          ? html`<button type="button" @click=${() => desk.putField(path, undefined)}>Leave out <span
            class="unseen">${label}</span></button>`
          : html`<button type="button" @click=${() => desk.addPart(path, of.of ?? of)}>Add <span
            class="unseen">${label}</span></button>`
      }
    </div>
  </div>`;
}

/**
 * The controls of one field.
 *
 * @param {Desk} desk
 * @param {string} part
 * @param {string} name
 * @param {Path} path - of the field
 * @returns {TemplateResult | TemplateResult[]}
 */
function fieldOf(desk, part, name, path) {
  const facts = desk.shapes[part][name];
  const value = at(desk.document, path);
  const put = (given) => desk.putField(path, given);
  const figure = (given) => desk.putFigure(path, given === '' ? null : given);
  const inControl = `${part}.${name}`;
  switch (facts.type) {
    case 'interval':
      return Object.keys(ENDS).map((end) => {
        const place = [...path, end];
        const given = value?.[end]?.value;
        const inside = counted(desk, `${inControl}-${end}`, facts, given, (one) => desk.putFigure(place, one));
        return framed(desk, place, facts, inside);
      });
    case 'quantity':
      return framed(desk, path, facts, counted(desk, inControl, facts, value?.value, figure));
    case 'number':
      return framed(
        desk,
        path,
        facts,
        counted(desk, inControl, facts, value, (given) => put(given ?? undefined)),
      );
    case 'label':
      return framed(
        desk,
        path,
        facts,
        facts.table ? named(desk, facts, value?.value, path, figure) : typed(desk, inControl, value?.value, figure),
      );
    case 'part':
      if (!facts.required) return framed(desk, path, facts, optional(desk, facts, path, String(facts.label)));
      return Object.keys(desk.shapes[facts.of]).flatMap((inside) => fieldOf(desk, facts.of, inside, [...path, inside]));
    case 'map':
      return /** @type {string[]} */ (facts.keys).map((key) =>
        framed(desk, [...path, key], facts, optional(desk, facts, [...path, key], `${facts.label} ${key}`)),
      );
    case 'list':
      if (facts.of.type === 'part') return framed(desk, path, facts, rowsOf(desk, facts, path));
      return framed(
        desk,
        path,
        facts,
        chips({
          label: String(facts.label),
          hint: facts.hint,
          chosen: value ?? [],
          put,
          offered: facts.table ? desk.entriesOf(facts.table) : undefined,
          longest: facts.of.longest,
        }),
      );
    default:
      if (facts.table)
        return framed(
          desk,
          path,
          facts,
          named(desk, facts, value, path, (id) => put(id || undefined)),
        );
      return framed(
        desk,
        path,
        facts,
        typed(desk, inControl, value ?? facts.default, (given) => put(given ?? undefined)),
      );
  }
}

const shown = (desk, part) => Object.keys(desk.shapes[part]).filter((name) => !HANDLED.has(name));

/**
 * The controls of a part, in the order of its declaration.
 *
 * @param {Desk} desk
 * @param {string} part
 * @param {Path} path
 * @param {string} [group] - only those of one group
 * @returns {TemplateResult}
 */
export function fieldsOf(desk, part, path, group) {
  const names = shown(desk, part).filter(
    (name) => group === undefined || (desk.shapes[part][name].group ?? '') === group,
  );
  const [short, long] = [false, true].map((wide) => names.filter((name) => isLong(desk.shapes[part][name]) === wide));
  const controls = [...short, ...long].map((name) => fieldOf(desk, part, name, [...path, name]));
  return html`<div class="controls">${controls}</div>`;
}
