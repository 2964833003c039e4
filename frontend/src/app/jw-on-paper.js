import {css, html} from 'lit';
import {carriedBy, gathered} from '../saved/carried.js';
import {codeTexts} from '../saved/on-paper.js';
import {checklistOf} from '../shared/checklist/items.js';
import {element, of, value} from '../shared/elements/element.js';
import {send} from '../shared/elements/send.js';
import {browserStore} from '../shared/state/browser-store.js';
import {AtStation} from '../shared/station/at-station.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {today} from '../shared/text/days.js';
import './jw-checklist.js';
import './jw-codes.js';
import {onPaper} from './jw-paper.js';
import {kitAnswer, lineAnswers} from './station-answers.js';

/** @import {Transport} from '../shared/answers.js' */

/**
 * What of the station goes to paper: the checklist, and all of it as codes to be read back.
 *
 * @fires jw-notice - {text}
 */
class JwOnPaper extends element({transport: value(/** @type {Transport} */ (of))}, AtStation) {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); margin-top: var(--space-3); }
      .panel { display: grid; gap: var(--space-2); justify-items: start; background: none; }
      h2 { margin-bottom: 0; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); }
    `,
  ];

  render() {
    return html`<section class="panel">
      <h2>On paper</h2>
      <p class="quiet">The checklist says what to pack for your lines and kit, and what to do on arrival, with boxes to
        tick here or on one printed sheet. A small station fits on a sheet of QR codes, without its sweeps; a picture of
        the sheet brings it back.</p>
      <div class="row">
        <button id="checklist" @click=${this._checklist}>Checklist</button>
        <button id="codes" @click=${this._codes}>Station as codes</button>
      </div>
    </section>`;
  }

  get _subject() {
    return [this.station.name, today()].filter(Boolean).join(', ');
  }

  async _codes() {
    try {
      const carried = gathered(browserStore(), this.station.name, today(), carriedBy(document));
      const texts = await codeTexts(carried);
      onPaper('Station as codes', Object.assign(document.createElement('jw-codes'), {texts, of: this._subject}));
    } catch (error) {
      const text = 'This browser keeps nothing for the page, so there is nothing to put into codes.';
      send(this, 'jw-notice', {text: error instanceof RangeError ? error.message : text});
    }
  }

  _checklist() {
    const list = Object.assign(document.createElement('jw-checklist'), {
      asked: this._asked(),
      of: this._subject,
    });
    onPaper('Checklist', list);
  }

  async _asked() {
    const refused = [];
    const asked = {transport: this.transport, storage: browserStore, station: this.station, refused};
    const lines = await lineAnswers(asked, this.vocabulary);
    const kit = await kitAnswer(asked, this.vocabulary);
    return {list: checklistOf(lines, kit?.answer), refused};
  }
}

customElements.define('jw-on-paper', JwOnPaper);
