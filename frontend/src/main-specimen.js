/**
 * A page for whoever works on the look: every part of the page in every state, light beside dark. It is made by
 * frontend/specimen.mjs and goes nowhere else.
 */
import {ContextProvider} from '@lit/context';
import {LitElement, css, html} from 'lit';
import START from '../build/start-data.json';
import {JwFault} from './app/jw-fault.js';
import './app/jw-masthead.js';
import './app/jw-notice.js';
import {PACKS, VIEWS} from './app/views.js';
import './shared/elements/jw-cautions.js';
import './shared/elements/jw-menu.js';
import './shared/elements/jw-progress.js';
import './shared/elements/jw-undo.js';
import {control} from './shared/fields/control.js';
import './shared/fields/jw-list-field.js';
import './shared/fields/jw-own.js';
import './shared/fields/jw-toggles-field.js';
import {STEPS, STEP_RULES} from './shared/margins/scale.js';
import {packMark, packStyles} from './shared/packs/mark.js';
import {stationContext} from './shared/station/at-station.js';
import {ofStation} from './shared/station/fields.js';
import {StationStore} from './shared/station/store.js';
import {base} from './shared/styles/base.js';
import {formStyles} from './shared/styles/forms.js';
import {panelStyles, pickStyles} from './shared/styles/panels.js';
import {viewStyles} from './shared/styles/view.js';
import {vocabularyContext} from './shared/vocabulary/speaking.js';
import {Vocabulary} from './shared/vocabulary/vocabulary.js';
import {STARTING} from './worker/messages.js';

const TYPE = ['fine', 'small', 'text', 'lead', 'title'];
const SPACES = ['half', '1', '2', '3', '4', '6', '10'];
const COLOURS = [
  ...['paper', 'card', 'sunk', 'ink', 'soft', 'line', 'edge', 'accent', 'accent-ink', 'accent-wash'],
  ...['focus', 'alarm', 'alarm-wash', 'refused', 'refused-line', 'refused-ink'],
];
const THEMES = ['light', 'dark'];
const TOO_MUCH = 'Power, peak envelope is 200 kW; allowed: 0 to 100 kW.';

/** A browser's store that forgets. */
const storage = () => ({getItem: () => null, setItem: () => {}, removeItem: () => {}});

const steps = new CSSStyleSheet();
steps.replaceSync(STEP_RULES);

/** Every part, in a light and in a dark column. */
class JwSpecimen extends LitElement {
  static styles = [
    base,
    formStyles,
    panelStyles,
    pickStyles,
    viewStyles,
    packStyles,
    steps,
    css`
      .themes { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 26rem), 1fr)); }
      .theme { padding: var(--space-4); background: var(--paper); color: var(--ink); min-width: 0; }
      .panel { margin-bottom: var(--space-3); }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center; margin-bottom: var(--space-2); }
      .space { height: var(--space-3); background: var(--edge); }
      .colour { width: 5rem; height: 2.5rem; border: 1px solid var(--edge); }
      figure { font-size: var(--type-fine); color: var(--soft); }
      jw-notice { position: static; }
    `,
  ];

  constructor() {
    super();
    const vocabulary = new Vocabulary(START, [...VIEWS, PACKS, ofStation], [], 'metric');
    new ContextProvider(this, {context: vocabularyContext, initialValue: vocabulary});
    new ContextProvider(this, {context: stationContext, initialValue: new StationStore(storage, vocabulary.fields)});
    this.vocabulary = vocabulary;
  }

  render() {
    return html`<main>
      <h1>Parts of the page</h1>
      <div class="themes">${THEMES.map(
        (theme) => html`<div class="theme" style="color-scheme: ${theme}">${this._parts(theme)}</div>`,
      )}</div>
    </main>`;
  }

  _parts(theme) {
    return [
      this._panel(
        'Type',
        TYPE.map((size) => html`<p style="font-size: var(--type-${size})">${size}: 100 W, +12.0 dB</p>`),
      ),
      this._panel('Spaces', this._spaces()),
      this._panel('Colours', this._colours()),
      this._panel('Steps of the margin', this._steps()),
      this._panel('Buttons', this._buttons(theme)),
      this._panel('Fields', this._fields()),
      this._panel('Tables, signs and marks', this._table()),
      this._panel('Messages', this._messages()),
    ];
  }

  _panel(heading, content) {
    return html`<section class="panel"><h2>${heading}</h2>${content}</section>`;
  }

  _spaces() {
    return SPACES.map(
      (space) => html`<figure>${space}<div class="space" style="width: var(--space-${space})"></div></figure>`,
    );
  }

  _colours() {
    return html`<div class="row">${COLOURS.map(
      (name) => html`<figure><div class="colour" style="background: var(--${name})"></div>${name}</figure>`,
    )}</div>`;
  }

  _steps() {
    return html`<div class="row">
      ${STEPS.map(({id, words}) => html`<span class="chip" data-step=${id}>${words}</span>`)}
      <span class="chip none">refused</span>
    </div>`;
  }

  _buttons(theme) {
    const kinds = ['primary', '', 'quiet'];
    return html`<div class="row">
        ${kinds.map((kind) => html`<button class=${kind}>${kind || 'plain'}</button>`)}
        ${kinds.map((kind) => html`<button class=${kind} disabled>${kind || 'plain'}, disabled</button>`)}
      </div>
      <div class="row">
        <button aria-pressed="true">pressed</button><button aria-pressed="false">not pressed</button>
        <button aria-expanded="true">expanded</button><button aria-expanded="false">not expanded</button>
        <button class="choice" aria-pressed="true">choice taken</button><button class="choice">choice</button>
        <button class="head">head of a row</button>
        <label class="pick">Open a file<input type="file" aria-label="File, ${theme}"></label>
      </div>
      <div class="row">
        <jw-undo undo></jw-undo>
        <jw-menu label="Menu" rest="with more words" .content=${() => html`<h2>Heading</h2>
          <button class="quiet">One</button><a class="quiet button" href="#two">Two</a>
          <div class="row"><button aria-pressed="true">Switch</button></div>`}></jw-menu>
      </div>`;
  }

  _fields() {
    const bands = this.vocabulary.lists.bands.slice(0, 6);
    return html`<div class="fields">
        ${control(this.vocabulary, 'choose.power_w', 100)}
        ${control(this.vocabulary, 'choose.power_w', 200_000, TOO_MUCH)}
        ${control(this.vocabulary, 'choose.vswr', 1.5)} ${control(this.vocabulary, 'choose.mode', 'ssb')}
        ${control(this.vocabulary, 'shack.name', 'Hill hut')}
        ${control(this.vocabulary, 'load_measured.touchstone', '')}
        <jw-list-field name="choose.frequencies_hz" .value=${[14.2e6]}></jw-list-field>
        <jw-toggles-field class="wide" name="choose.bands" .choices=${bands} .sets=${[{words: 'none', value: []}]}
          .value=${['40m']}></jw-toggles-field>
      </div>
      <details><summary>Folded <small>what is in it</small></summary><p>Unfolded.</p></details>
      <jw-own of="This line" what="its own SWR"></jw-own>`;
  }

  _table() {
    return html`<table class="plain">
        <thead><tr><th>Part</th><th class="number">Loss</th></tr></thead>
        <tbody>
          <tr><td>UHF <span class="sign">weakest</span></td><td class="number">0.001 dB</td></tr>
          <tr><td>N <span class="sign bad">! bad joint</span></td><td class="number">0.0007 dB</td></tr>
          <tr>
            <td>BNC <span class="kind">data sheet</span> ${packMark('Club')}</td>
            <td class="number">–</td>
          </tr>
        </tbody>
      </table>
      <p>A sentence with <a href="#link">a link</a>, <small>small print</small> and R<sub>c</sub>.</p>
      <p class="quiet">What is said beside.</p><p class="error">What is wrong.</p>`;
  }

  _messages() {
    return html`<p class="trouble">What is wrong with the view. <button>Try again</button></p>
      <jw-progress status="pending" .stage=${STARTING}></jw-progress>
      <jw-notice text="Link copied." link="https://example.org/#vswr=2"
        .action=${{words: 'Copy as text', run: () => {}}}></jw-notice>
      <button @click=${this._break}>Show a fault</button>
      <jw-cautions .cautions=${START.cautions.slice(0, 2)}></jw-cautions>`;
  }

  _break() {
    const fault = new JwFault();
    document.body.append(fault);
    fault.show('Line', 'Jointwise\nView: Line\nMessage: RangeError: an example');
  }
}

customElements.define('jw-specimen', JwSpecimen);
