import {css, html} from 'lit';
import START from '../../../build/start-data.json';
import {element, of, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {levelsWith} from '../../shared/state/levels.js';
import {base} from '../../shared/styles/base.js';
import {digits, frequency, power} from '../../shared/text/format.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';

/**
 * @import {State} from '../fields.js'
 * @import {AskedCell} from './changes.js'
 */

/** What stations run, beside the levels of the matrix. */
const USUAL_POWERS_W = [0, 5, 10, 25, 50, 100, 200, 400, 500, 750, 1000, 1500];
const USUAL_SWRS = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 10];
/** Tells a spot frequency from a band among the menu's values. */
const SPOT = ' Hz';

const PLACES = [
  ['indoor', 'indoors'],
  ['sheltered', 'sheltered'],
  ['exposed', 'outdoors'],
  ['immersed', 'under water'],
];

const powerWords = (watts) => (watts >= 1000 ? `${digits(watts / 1000)} kW` : power(watts));

/**
 * The question as one sentence; each thing asked about is a menu in it.
 *
 * @fires jw-ask - {values}: fields of the question with what was chosen
 */
class JwSentence extends element(
  {
    state: value(/** @type {State} */ (of)),
    cell: value(/** @type {AskedCell} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      p { font-size: var(--type-lead); line-height: 44px; }
      span { white-space: nowrap; }
      select.word {
        appearance: none; width: auto; max-width: 100%; field-sizing: content; min-height: var(--target);
        padding: 0 1.05em 0 var(--space-half); border: 0; border-radius: 0; font: inherit; font-weight: 650;
        line-height: 1.2;
        cursor: pointer; background: linear-gradient(var(--edge) 0 0) 0 calc(50% + 0.75em) / 100% 2px no-repeat;
      }
      select.word option { background: var(--card); color: var(--ink); font-weight: 400; }
      .menu { position: relative; }
      .menu::after {
        content: '▾'; position: absolute; right: 2px; top: 0; line-height: 1.2; pointer-events: none;
        color: var(--soft); font-size: var(--type-fine);
      }
      @media (max-width: 480px) { p { font-size: var(--type-lead); } }
    `,
  ];

  render() {
    const {cell, state, vocabulary} = this;
    const {lists} = vocabulary;
    const families = lists.families.map(({id, name}) => [id, START.question.families[id] ?? name]);
    const modes = lists.modes.map(({id, name}) => [id, START.question.modes[id] ?? name]);
    const bands = lists.bands
      .filter(({regions}) => regions.includes(String(state.region)))
      .map(({id, name}) => [id, name]);
    const spots = [...new Set([...state.frequencies_hz, cell.frequency_hz ?? []].flat())];
    const columns = [...bands, ...spots.map((spot) => [`${spot}${SPOT}`, frequency(spot)])];
    const levels = [...state.powers_w, state.power_w].reduce(levelsWith, USUAL_POWERS_W);
    const powers = levels.map((watts) => [watts, watts === 0 ? 'no power (receive)' : powerWords(watts)]);
    const swrs = levelsWith(USUAL_SWRS, state.vswr).map((swr) => [swr, digits(swr)]);
    return html`<p role="group" aria-label="The question">
      ${this._menu('family', 'Connector', families, cell.family)}
      <span>with ${this._menu('power_w', 'Power', powers, state.power_w, Number)}</span>
      ${this._menu('mode', 'Mode', modes, state.mode)}
      <span>on ${this._menu('column', 'Band', columns, cell.band ?? `${cell.frequency_hz}${SPOT}`)},</span>
      <span>SWR ${this._menu('vswr', 'SWR', swrs, state.vswr, Number)},</span>
      ${this._menu('exposure', 'Where it is', PLACES, state.exposure)}
    </p>`;
  }

  /**
   * A value that no entry has, as out of a link, stands among them: else another would seem chosen.
   *
   * @param {string} name
   * @param {string} label
   * @param {any[][]} entries - pairs of value and words
   * @param {any} chosen
   * @param {(text: string) => any} [read]
   */
  _menu(name, label, entries, chosen, read = String) {
    const known = entries.some(([id]) => id === chosen) ? entries : [...entries, [chosen, String(chosen)]];
    return html`<span class="menu"><select class="word" aria-label=${label} data-name=${name}
      @change=${(event) => this._chose(name, read(event.target.value))}>
      ${known.map(([id, words]) => html`<option value=${id} .selected=${id === chosen}>${words}</option>`)}
    </select></span>`;
  }

  _chose(name, chosen) {
    send(this, 'jw-ask', {values: name === 'column' ? columnOf(chosen) : {[name]: chosen}});
  }
}

const columnOf = (chosen) =>
  chosen.endsWith(SPOT) ? {frequency_hz: Number(chosen.slice(0, -SPOT.length))} : {band: chosen};

customElements.define('jw-sentence', JwSentence);
