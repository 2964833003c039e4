import {css, html, nothing} from 'lit';
import '../shared/charts/jw-chart.js';
import {element, of, state, value} from '../shared/elements/element.js';
import {reachable} from '../shared/elements/reachable.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {digits} from '../shared/text/format.js';
import {valueText} from '../shared/text/measures.js';
import {distanceFigure, lineSmith, returnLossFigure} from './figures.js';
import './jw-sweep-place.js';
import {STATE_MARKS, isAccused, leastWords, metres, oddsWords, partsOf, percent, share, sizeWords} from './reading.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {LineCheck} from './result.js'
 */

/** How many usual deviations a part may be off before it is marked. */
const UNUSUAL = 2;

/** A one-port sweep along its line: part by part in words, then the picture, and the numbers for who unfolds them. */
class JwSweepLine extends element({
  check: value(/** @type {LineCheck} */ (of)),
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
  /** Whether the charts over frequency are unfolded; a chart in a closed fold has no width to be drawn in. */
  _overFrequency: state(/** @type {boolean} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .pair {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: var(--space-3);
      }
      .scroll { overflow-x: auto; }
      ol { list-style: none; margin: 0; padding: 0; }
      #parts li {
        display: grid; grid-template-columns: 1.6em minmax(0, 1fr); gap: 0 var(--space-2); padding: var(--space-1) 0;
        border-bottom: 1px solid var(--line); font-size: var(--type-text);
      }
      #parts li:last-child { border-bottom: 0; }
      #parts li[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      #parts .sign { grid-row: span 2; align-self: start; text-align: center; font-weight: 700; }
      @media (min-width: 700px) {
        #parts li { grid-template-columns: 1.6em minmax(0, 22em) minmax(0, 1fr); }
        #parts .sign { grid-row: auto; }
      }
      #parts .cable { color: var(--soft); }
      tr[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      td.words { min-width: 9em; }
      details.panel { padding-top: var(--space-half); padding-bottom: var(--space-half); }
      details[open].panel { padding-bottom: var(--space-3); }
      summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; }
      p + .scroll { margin-top: var(--space-2); }
      @media print { :host, .pair { display: block; } .panel { margin-bottom: 2mm; } .scroll { overflow: visible; } }
    `,
  ];

  willUpdate(changed) {
    if (!changed.has('check')) return;
    const {check} = this;
    this._distance = (colours) => distanceFigure(check, colours);
    this._returned = (colours) => returnLossFigure(check, colours);
    this._smith = (colours) => lineSmith(check, colours);
  }

  updated() {
    reachable(this.renderRoot.querySelectorAll('.scroll'));
  }

  render() {
    const {check} = this;
    const distanceLabel =
      'Reflection against distance, measured and expected, a mark at each joint; ' +
      'the same numbers stand in the table of joints';
    return html`<section class="panel" id="parts"><h2>Part by part <small>from the analyser on</small></h2>
        <ol>${partsOf(check).map((part) => this._part(part))}</ol></section>
      <section class="panel" id="distance">
        <h2>Echoes along the line</h2>
        <jw-chart style="--chart:340px" .figure=${this._distance} .load=${this.load}
          label=${distanceLabel}></jw-chart>
        <p class="quiet">
          Shaded: what a good line may show. The echo of the line’s end may run out of the picture.
        </p>
        <jw-sweep-place .check=${check}></jw-sweep-place>
      </section>
      ${this._joints()} ${this._fit()}
      <details class="panel more" @toggle=${(event) => (this._overFrequency = event.target.open)} id="frequency">
        <summary>Return loss and Smith chart</summary>
        ${this._overFrequency ? this._charts() : nothing}
      </details>`;
  }

  _part(part) {
    const accused = isAccused(part.element, this.check);
    return html`<li data-element=${part.element} ?data-accused=${accused} class=${'from_m' in part ? 'cable' : ''}>
      <span class=${accused ? 'sign bad' : 'sign'} aria-hidden="true">${STATE_MARKS[part.state]}</span>
      <span>${part.element + 1} · ${part.name}, ${part.place}</span>
      <span>${part.words}</span>
    </li>`;
  }

  _charts() {
    const returnedLabel = 'Return loss against frequency: measured, expected of a sound line, and as fitted';
    return html`<div class="pair">
      <section id="returned"><h3>Return loss at the analyser</h3>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${returnedLabel}></jw-chart></section>
      <section id="smith"><h3>Smith chart at the analyser</h3>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Measured and fitted reflection on the Smith chart"></jw-chart></section>
    </div>`;
  }

  _joints() {
    const {check} = this;
    const changed = check.joints.some(({change}) => change !== null);
    return html`<details class="panel more" id="joints">
      <summary>Numbers at each joint</summary>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Joint</th><th scope="col" class="number">At</th><th scope="col">Finding</th>
            <th scope="col" class="number">Measured</th><th scope="col" class="number">Expected</th>
            <th scope="col" class="number">Excess</th><th scope="col" class="number">Threshold</th>
            ${changed ? html`<th scope="col" class="number">Change</th>` : nothing}
            <th scope="col" class="number">Smallest fault</th>
          </tr>
        </thead>
        <tbody>
          ${check.joints.map((joint) => this._joint(joint, changed))}
        </tbody>
      </table></div>
      <p class="quiet">
        Reflections are shares of the wave sent. The last column is the smallest added resistance and the smallest
        capacitance across, as of water, that this sweep would show there. It
        reaches ${metres(check.range_m)} and keeps echoes ${valueText(check.resolution_m, 'm', 2)} apart
        (${check.transform}, side lobes ${digits(check.side_lobe_db, 3)} dB down); velocity and loss of the cables are
        taken out.
      </p>
    </details>`;
  }

  _joint(joint, changed) {
    const {check} = this;
    const accused = isAccused(joint.element, check);
    const near = () => `; ${valueText(joint.nearest_m, 'm', 2)} to the next, too near for an echo of its own`;
    return html`<tr data-element=${joint.element} ?data-accused=${accused}>
      <th scope="row">${joint.element + 1} · ${joint.name}</th>
      <td class="number">${valueText(joint.distance_m, 'm', 3)}</td>
      <td class="words">${joint.words}${joint.separate ? '' : near()}</td>
      <td class="number">${share(joint.measured)}</td><td class="number">${share(joint.expected)}</td>
      <td class="number">${share(joint.excess)}</td><td class="number">${share(joint.threshold)}</td>
      ${changed ? html`<td class="number">${share(joint.change)}</td>` : nothing}
      <td class="number">${leastWords(joint)}</td>
    </tr>`;
  }

  _fit() {
    const {candidates, deviations, floor, noise} = this.check;
    return html`<details class="panel more" id="fit">
      <summary>What explains the sweep</summary>
      ${
        candidates.length === 0
          ? html`<p>
              A sound line leaves ${percent(noise)} of the reflection unexplained. Everyday lines leave
              ${percent(floor)}, which counts as no fault.
            </p>`
          : candidatesTable(candidates)
      }
      <h3>Good parts as fitted</h3>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Cable</th><th scope="col">What</th>
            <th scope="col" class="number">Off by</th><th scope="col" class="number">±</th>
            <th scope="col" class="number">Usual</th>
          </tr>
        </thead>
        <tbody>
          ${deviations.map(deviationRow)}
        </tbody>
      </table></div>
    </details>`;
  }
}

const candidatesTable = (candidates) =>
  html`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Where</th><th scope="col">What it does</th><th scope="col">Size, with its bounds</th>
          <th scope="col" class="number">Odds</th><th scope="col" class="number">Explains</th>
          <th scope="col" class="number">Leaves</th>
        </tr>
      </thead>
      <tbody>
        ${candidates.map(candidateRow)}
      </tbody>
    </table></div>
    <p class="quiet">
      Bounds are one standard deviation. Odds are against a sound line; what is explained and what is left are rms of
      the reflection.
    </p>`;

const candidateRow = (candidate) =>
  html`<tr>
    <th scope="row">${candidate.element + 1} · ${candidate.joint}, ${metres(candidate.distance_m)}</th>
    <td class="words">${candidate.name}</td>
    <td class="words">${candidate.sizes.map((size) => html`<div>${sizeWords(size)}</div>`)}</td>
    <td class="number">${oddsWords(candidate)}</td><td class="number">${percent(candidate.reflection)}</td>
    <td class="number">${percent(candidate.misfit)}</td>
  </tr>`;

const deviationRow = ({element: at, part, what, share: off, uncertainty, usual}) =>
  html`<tr>
    <th scope="row">${at + 1} · ${part}</th><td>${what}</td>
    <td class="number">${Math.abs(off) > UNUSUAL * usual ? '! ' : ''}${percent(off)}</td>
    <td class="number">${percent(uncertainty)}</td><td class="number">${percent(usual)}</td>
  </tr>`;

customElements.define('jw-sweep-line', JwSweepLine);
