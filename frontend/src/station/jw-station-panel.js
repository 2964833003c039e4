import {css, html, nothing} from 'lit';
import '../shared/elements/jw-undo.js';
import {changesOf, control} from '../shared/fields/control.js';
import '../shared/fields/jw-toggles-field.js';
import {AtStation} from '../shared/station/at-station.js';
import {inPlaceOf, isFull, withChanged, withInUse, withOneMore, withoutOne} from '../shared/station/edits.js';
import {EXAMPLES} from '../shared/station/examples.js';
import {settingOf} from '../shared/station/station.js';
import {refusalOf as addressRefusal} from '../shared/station/web-address.js';
import {base} from '../shared/styles/base.js';
import {formStyles} from '../shared/styles/forms.js';
import {panelStyles} from '../shared/styles/panels.js';
import {digits, frequency, power} from '../shared/text/format.js';
import './jw-station-list.js';
import {refusalOf} from './refusal.js';

/** Where the panel's steps are made, as a view's. */
export const PANEL = 'station';

const LOOKED_AT = ['mode', 'power_w', 'power_is', 'vswr', 'band', 'frequency_hz', 'region', 'bands'];
const SITE = [
  ...['exposure', 'added_sealing', 'vibration', 'ambient_temperature_c', 'solar_irradiance_w_per_m2', 'altitude_m'],
  ...['matings_per_year', 'service_life_years', 'condition'],
];
const MORE = [
  ...['transmit_share', 'on_time_s', 'off_time_s', 'system_impedance_ohm', 'return_loss_asked_db'],
  ...['cable', 'cable_diameter_m', 'added_resistance_ohm'],
];
/** Where a spot frequency starts; the middle of a band most stations have. */
const FIRST_SPOT_HZ = 14.2e6;
/** An antenna known in another way than by its SWR. */
const KNOWN_BY = {
  resonant: 'known by its resonance',
  impedance: 'known by its impedance',
  table: 'known by a table of impedances',
  measured: 'known by a measured file',
  dummy: 'a dummy load',
};
const NO_BANDS = [{words: 'not given', value: null}];
const NO_CABLES = [{words: 'none', value: []}];

/**
 * The station, described once: what it has, how it is used, and where it stands.
 */
export class JwStationPanel extends AtStation {
  constructor() {
    super();
    /** An address that was typed and can't be taken; empty where nothing is wrong. */
    this._address = '';
  }

  static styles = [
    base,
    formStyles,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center; }
      .chips button { border-radius: 99px; }
      .panel { background: none; }
      .lists { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .double { grid-column: 1 / -1; }
      .wide { grid-column: 1 / -1; }
      h3 { margin: 0 0 var(--space-2); }
      details { border-top: 0; }
      .panel p { margin-top: var(--space-2); }
    `,
  ];

  render() {
    const {station} = this;
    const held = EXAMPLES.find(({station: {name, settings}}) => holds(station, name, settings));
    return html`<div class="row">
        <jw-undo ?undo=${this.stationStore.canUndo(PANEL)} ?redo=${this.stationStore.canRedo(PANEL)}
          @jw-turn=${({detail}) => this.stationStore.turn(detail.way, PANEL)}></jw-undo>
      </div>
      <p class="quiet">Every view uses this station. This browser keeps it, and every link holds it.</p>
      <div class="row chips" role="group" aria-label="Example stations">
        <span class="quiet">Example stations</span>
        ${EXAMPLES.map(
          (example) => html`<button data-example=${example.id} aria-pressed=${example === held}
            @click=${() => this._change(inPlaceOf(this.station, example.station))}>${example.name}</button>`,
        )}
        <button id="empty" @click=${() => this._change(inPlaceOf(this.station))}>Start empty</button>
      </div>
      ${held ? html`<p class="quiet">${held.story}</p>` : nothing}
      <section class="panel" @jw-change=${this._told}>
        <div class="fields">
          <div class="double">${control(this.vocabulary, 'shack.name', station.name)}</div>
          ${control(this.vocabulary, 'shack.units', station.units)}
        </div>
      </section>
      <div class="lists" @jw-station-edit=${this._edited}>${this._lists()}</div>
      <section class="panel" @jw-change=${this._set}>
        <h2>How it is used</h2>
        <div class="fields">${LOOKED_AT.map((name) => this._field(name))}</div>
      </section>
      <section class="panel" @jw-change=${this._set}>
        <h2>Where it stands</h2>
        <div class="fields">${SITE.map((name) => this._field(name))}</div>
        <details><summary>Rarely changed ${this._changedOf(MORE)}</summary>
          <div class="fields">${MORE.map((name) => this._field(name))}</div></details>
      </section>
      <section class="panel" @jw-change=${this._told}>
        <h2>Cables in use <small>offered first</small></h2>
        ${this._cables()}
      </section>
      <section class="panel" @jw-change=${this._told}>
        <h2>Links</h2>
        ${control(this.vocabulary, 'shack.address', this._address || station.address, addressRefusal(this._address))}
        <p class="quiet">Where links and the codes on labels lead when this page is a file on your disk. Empty: to
          this page itself.</p>
      </section>`;
  }

  _lists() {
    const {antenna, antennas, gear, rig, rigs} = this.station;
    const {families} = this.vocabulary.lists;
    const endOf = ({family, gender}) =>
      [families.find(({id}) => id === family)?.name ?? family, gender].join(' ').trim();
    const rows = (group, names) => (item) => names.map((name) => [`${group}.${name}`, item[name] ?? null]);
    const rigWords = ({name, power_w: watts, family, gender}) => [
      name || 'Transmitter',
      [power(watts), endOf({family, gender})].filter(Boolean).join(', '),
    ];
    return html`<section class="panel"><h2>Transmitters</h2>
        <jw-station-list list="rigs" one="a transmitter" .items=${rigs} .used=${rig}
          ?full=${isFull(this.station, 'rigs')} .fieldsOf=${rows('rig', RIG)} .wordsOf=${rigWords}></jw-station-list>
      </section>
      <section class="panel"><h2>Antennas</h2>
        <jw-station-list list="antennas" one="an antenna" .items=${antennas} .used=${antenna}
          ?full=${isFull(this.station, 'antennas')} .fieldsOf=${antennaRows} .wordsOf=${antennaWords}></jw-station-list>
        <p class="quiet">An antenna known by more than its SWR is described in the Line view and added from there.</p>
      </section>
      <section class="panel"><h2>Gear <small>its ports; kits start from them</small></h2>
        <jw-station-list list="gear" one="a port" .items=${gear} ?full=${isFull(this.station, 'gear')}
          .fieldsOf=${rows('port', PORT)} .wordsOf=${(port) => [
            port.name || endOf(port),
            `${endOf(port)}, up to ${frequency(port.highest_frequency_hz)}, ${power(port.power_w)}`,
          ]}></jw-station-list>
      </section>`;
  }

  _cables() {
    const {cables} = this.vocabulary.lists;
    const chosen = cables.filter(({id}) => this.station.cables.includes(id)).map(({name}) => name);
    return html`<details><summary>${chosen.join(', ') || 'none given'}</summary>
      <jw-toggles-field name="shack.cables" .choices=${cables} .sets=${NO_CABLES}
        .value=${this.station.cables}></jw-toggles-field></details>`;
  }

  _valueOf(name) {
    return settingOf(this.station.settings, name, this.vocabulary.first.settings[name]);
  }

  _changedOf(names) {
    const count = names.filter((name) => name in this.station.settings).length;
    return count > 0 ? html`<small>${count} set</small>` : nothing;
  }

  _field(name) {
    const key = `settings.${name}`;
    const one = this._valueOf(name);
    if (name === 'frequency_hz' && this._valueOf('band') !== null) return nothing;
    if (name === 'cable_diameter_m' && this._valueOf('cable') !== null) return nothing;
    if (name === 'bands') {
      const region = String(this._valueOf('region'));
      const choices = this.vocabulary.lists.bands.map((band) => ({...band, hidden: !band.regions.includes(region)}));
      return html`<jw-toggles-field class="wide" name=${key} .choices=${choices} .sets=${NO_BANDS}
        .value=${one}></jw-toggles-field>`;
    }
    return control(this.vocabulary, key, one, refusalOf(this.vocabulary, key, one));
  }

  _change(changes, live = false) {
    this.stationStore.change(PANEL, changes, undefined, live);
  }

  /** A setting. */
  _set(event) {
    event.stopPropagation();
    const changes = changesOf(event);
    if ('band' in changes) changes.frequency_hz = changes.band === null ? FIRST_SPOT_HZ : null;
    const {first} = this.vocabulary;
    const said = Object.entries(changes).map(([name, one]) => [name, one === first.settings[name] ? null : one]);
    this._change({settings: Object.fromEntries(said)}, event.detail.live);
  }

  /** Something of the station itself. */
  _told(event) {
    event.stopPropagation();
    const changes = changesOf(event);
    this._address = 'address' in changes && addressRefusal(changes.address) ? changes.address : '';
    if (this._address) this.requestUpdate();
    else this._change(changes);
  }

  _edited({detail: {what, list, at, fields}}) {
    const {station} = this;
    switch (what) {
      case 'add':
        return this._change(withOneMore(station, list));
      case 'remove':
        return this._change(withoutOne(station, list, at));
      case 'use':
        return this._change(withInUse(station, list, at === station[list === 'rigs' ? 'rig' : 'antenna'] ? -1 : at));
    }
    const {vswr, ...rest} = fields;
    const load = vswr === undefined ? {} : {load: {...station.antennas[at].load, vswr}};
    this._change(withChanged(station, list, at, {...rest, ...load}));
  }
}

const RIG = ['name', 'power_w', 'behaviour', 'family', 'gender'];
const PORT = ['name', 'family', 'gender', 'highest_frequency_hz', 'power_w', 'impedance_ohm'];

const antennaRows = ({name, load}) => [
  ['antenna.name', name],
  ...(load.kind === 'vswr' ? [['load_vswr.vswr', load.vswr]] : []),
];

const antennaWords = ({name, load}) => [name || 'Antenna', KNOWN_BY[load.kind] ?? `SWR ${digits(load.vswr)}`];

/** Whether the station is that of an example as it came. */
const holds = (station, name, settings) =>
  station.name === name &&
  Object.entries(settings).every(([field, one]) => JSON.stringify(station.settings[field]) === JSON.stringify(one));

customElements.define('jw-station-panel', JwStationPanel);
