import {css, html, nothing} from 'lit';
import '../shared/charts/jw-chart.js';
import {element, of, value} from '../shared/elements/element.js';
import {reachable} from '../shared/elements/reachable.js';
import {base} from '../shared/styles/base.js';
import {panelStyles} from '../shared/styles/panels.js';
import {digits, quantity} from '../shared/text/format.js';
import {distanceFigure, lineSmith, returnLossFigure} from './figures.js';
import {jointWords, leastWords, percent, share, sizeWords} from './reading.js';

/**
 * @import {LoadCharts} from '../shared/charts/jw-chart.js'
 * @import {LineCheck} from './result.js'
 */

/** A one-port sweep along its line: distance, joints, what was fitted, frequency and Smith chart. */
class JwSweepLine extends element({
  check: value(/** @type {LineCheck} */ (of)),
  /** Brings the chart library. */
  load: value(/** @type {LoadCharts} */ (of)),
}) {
  static styles = [
    base,
    panelStyles,
    css`
      :host { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: 12px; }
      .wide { grid-column: 1 / -1; }
      .scroll { overflow-x: auto; }
      tr[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      td.words { min-width: 9em; }
      summary { cursor: pointer; min-height: var(--target); align-content: center; }
      p + .scroll { margin-top: 6px; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } .scroll { overflow: visible; } }
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
    const returnedLabel = 'Return loss against frequency: measured, expected of a sound line, and as fitted';
    return html`<section class="panel wide" id="distance">
        <h2>Reflection along the line</h2>
        <jw-chart style="--chart:340px" .figure=${this._distance} .load=${this.load}
          label=${distanceLabel}></jw-chart>
        <p class="quiet">
          Shaded: what a good line may show. Reaches ${quantity(check.range_m, 'm', 3)},
          keeps echoes ${quantity(check.resolution_m, 'm', 2)} apart
          (${check.transform}, side lobes ${digits(check.side_lobe_db, 3)} dB down); velocity and loss of the cables are
          taken out. The echo of the line’s end may run out of the picture.
        </p>
      </section>
      ${this._joints()} ${this._fit()}
      <section class="panel" id="returned"><h2>Return loss at the analyser</h2>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${returnedLabel}></jw-chart></section>
      <section class="panel" id="smith"><h2>Smith chart at the analyser</h2>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Measured and fitted reflection on the Smith chart"></jw-chart></section>`;
  }

  _joints() {
    const {check} = this;
    const changed = check.joints.some(({change}) => change !== null);
    return html`<section class="panel wide" id="joints">
      <h2>Joints</h2>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Joint</th><th scope="col" class="number">At</th><th scope="col">Finding</th>
            <th scope="col" class="number">Measured</th><th scope="col" class="number">Expected</th>
            <th scope="col" class="number">Excess</th><th scope="col" class="number">Threshold</th>
            ${changed ? html`<th scope="col" class="number">Change</th>` : nothing}
            <th scope="col" class="number">Would show</th>
          </tr>
        </thead>
        <tbody>
          ${check.joints.map((joint) => this._joint(joint, changed))}
        </tbody>
      </table></div>
      <p class="quiet">
        Reflections are shares of the wave sent. “Would show” is the smallest added resistance this sweep would show
        there.
      </p>
    </section>`;
  }

  _joint(joint, changed) {
    const {check} = this;
    const accused = check.suspect === joint.element || check.apart.includes(joint.element);
    const near = () => `; ${quantity(joint.nearest_m, 'm', 2)} to the next, too near for an echo of its own`;
    return html`<tr data-element=${joint.element} ?data-accused=${accused}>
      <th scope="row">${joint.element + 1} · ${joint.name}</th>
      <td class="number">${quantity(joint.distance_m, 'm', 3)}</td>
      <td class="words">${jointWords(joint, check)}${joint.separate ? '' : near()}</td>
      <td class="number">${share(joint.measured)}</td><td class="number">${share(joint.expected)}</td>
      <td class="number">${share(joint.excess)}</td><td class="number">${share(joint.threshold)}</td>
      ${changed ? html`<td class="number">${share(joint.change)}</td>` : nothing}
      <td class="number">${leastWords(joint)}</td>
    </tr>`;
  }

  _fit() {
    const {candidates, deviations, noise} = this.check;
    return html`<section class="panel wide" id="fit">
      <h2>What explains the sweep</h2>
      ${
        candidates.length === 0
          ? html`<p>
              The line as it should be leaves ${percent(noise)} of the reflection unexplained, and no single fault
              explains enough of that to count.
            </p>`
          : candidatesTable(candidates)
      }
      <details class="more"><summary>Good parts as fitted</summary><div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Cable</th><th scope="col">What</th>
            <th scope="col" class="number">Off by</th><th scope="col" class="number">±</th>
          </tr>
        </thead>
        <tbody>
          ${deviations.map(deviationRow)}
        </tbody>
      </table></div></details>
    </section>`;
  }
}

const candidatesTable = (candidates) =>
  html`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Joint</th><th scope="col">Fault</th><th scope="col">Size, with its bounds</th>
          <th scope="col" class="number">Evidence</th><th scope="col" class="number">Left over</th>
        </tr>
      </thead>
      <tbody>
        ${candidates.map(candidateRow)}
      </tbody>
    </table></div>
    <p class="quiet">
      Bounds are one standard deviation. Evidence is the fall of the Bayesian information criterion against a sound
      line; ten more are odds of 150 to 1.
    </p>`;

const candidateRow = ({element: at, joint, name, sizes, evidence, misfit}) =>
  html`<tr>
    <th scope="row">${at + 1} · ${joint}</th><td class="words">${name}</td>
    <td class="words">${sizes.map((size) => html`<div>${sizeWords(size)}</div>`)}</td>
    <td class="number">${digits(evidence, 3)}</td><td class="number">${percent(misfit)}</td>
  </tr>`;

const deviationRow = ({element: at, part, what, share: off, uncertainty}) =>
  html`<tr>
    <th scope="row">${at + 1} · ${part}</th><td>${what}</td>
    <td class="number">${percent(off)}</td><td class="number">${percent(uncertainty)}</td>
  </tr>`;

customElements.define('jw-sweep-line', JwSweepLine);
