import {css, html, nothing} from 'lit';
import {element, of, value} from '../shared/elements/element.js';
import {packMark, packStyles} from '../shared/packs/mark.js';
import {base} from '../shared/styles/base.js';
import {lengthText, sizeText} from '../shared/text/measures.js';
import {origin, sentence, sentences, sourceList, stepList} from './advice.js';
import {numbered} from './from.js';
import './jw-fitout-care.js';
import {sheetStyles} from './styles.js';

/** @import {Sheet} from './answer.js' */

/**
 * The sheet of one joint, from its parts to its care.
 *
 * @slot - its record
 */
class JwFitoutSheet extends element({
  sheet: value(/** @type {Sheet} */ (of)),
  /** The titles of the sources, by id. */
  titles: value(/** @type {Map<string, string>} */ (of)),
  /** Station and day. */
  of: {type: String},
}) {
  static styles = [
    base,
    packStyles,
    sheetStyles,
    css`
      article {
        padding: var(--space-4) var(--space-4); background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round);
      }
      @media print { article { padding: 0; border: 0; } }
    `,
  ];

  render() {
    const {sheet} = this;
    const numbers = this._numbers;
    return html`<article aria-labelledby="heading">
      <h2 id="heading">${sheet.heading}${packMark(sheet.pack)}</h2>
      ${this.of ? html`<p class="quiet">${this.of}</p>` : nothing}
      <slot></slot>
      ${sheet.warnings.map(
        (one) =>
          html`<p class="warning"><b>${one.name}.</b> ${one.sentence} ${origin([one.kind], [one.source], numbers)}</p>`,
      )}
      <div class="columns">
        <section id="parts"><h3>Parts</h3>${this._parts()}</section>
        <section id="tools"><h3>Tools</h3>${sentences(sheet.tools, numbers)}</section>
        <section id="steps"><h3>Steps</h3>${stepList(sheet.steps, numbers)}</section>
        <section id="torque"><h3>Torque</h3>${this._torque()}</section>
        <section id="sealing"><h3>Sealing</h3>${this._sealing()}</section>
        ${this._cable()}
        <jw-fitout-care .sheet=${sheet} .numbers=${numbers}></jw-fitout-care>
      </div>
      ${sourceList(numbers, this.titles)}
    </article>`;
  }

  get _numbers() {
    return numbered(this.sheet);
  }

  _parts() {
    const {adapter, gender, halves} = this.sheet;
    return html`<table class="plain"><thead><tr><th scope="col">Plug or jack</th><th scope="col">On</th><th
      scope="col">Put on by</th></tr></thead>
      <tbody>${halves.map(
        (half) => html`<tr><th scope="row">${this.sheet.family_name} ${half.half}</th>
          <td>${half.on}${half.cable_diameter_m === null ? '' : `, ${sizeText(half.cable_diameter_m)}`}</td><td
            >${half.attachment || '–'}</td></tr>`,
      )}</tbody></table>
      <ul>${adapter ? html`<li>Adapter: ${adapter}</li>` : nothing}<li>${sentence(gender, this._numbers)}</li></ul>`;
  }

  _torque() {
    const {torque} = this.sheet;
    return html`<p class="figure">${torque.sentence}</p>
      <p class="quiet">${torque.notes.join('; ')}</p>${origin(torque.kinds, torque.sources, this._numbers)}`;
  }

  _sealing() {
    const {sealing} = this.sheet;
    const numbers = this._numbers;
    const meaning = sealing.mated_meaning.map(({text}) => text).join('; ');
    return html`<p class=${sealing.refused ? 'warning' : ''}>${sealing.sentence}
    ${origin([sealing.kind], [sealing.source], numbers)}</p>
      <p class="quiet">Mated: ${sealing.mated}${meaning && `, ${meaning}`}.</p>
      ${this._part('Prepare', sealing.preparation)}
      ${
        sealing.layers.length > 0
          ? html`<h4>Layers, from the inside out</h4>
            <ol class="layers">${sealing.layers.map(
              (layer) =>
                html`<li><b>${layer.name}</b>, ${lengthText(layer.length_m, 2)}. ${sentence(layer, numbers)}</li>`,
            )}</ol>`
          : nothing
      }
      ${this._part('Lead the water away', sealing.water)}`;
  }

  _part(heading, all) {
    return all.length > 0 ? html`<h4>${heading}</h4>${sentences(all, this._numbers)}` : nothing;
  }

  _cable() {
    const {bends, relief} = this.sheet;
    if (bends.length + relief.length === 0) return nothing;
    return html`<section id="bends"><h3>Bends and strain relief</h3>
      <ul>${bends.map((bend) => html`<li>${this._bend(bend)}</li>`)}</ul>${sentences(relief, this._numbers)}</section>`;
  }

  _bend(bend) {
    const often =
      bend.repeated_radius_m === null
        ? 'not to be bent again'
        : `bent again and again: ${sizeText(bend.repeated_radius_m)}`;
    const kinds = [bend.fixed_kind, bend.repeated_kind].filter(Boolean);
    const sources = [bend.fixed_source, bend.repeated_source].filter(Boolean);
    return html`${bend.name}, smallest radius laid once: ${sizeText(bend.fixed_radius_m)}; ${often}.
      ${origin(kinds, sources, this._numbers)}`;
  }
}

customElements.define('jw-fitout-sheet', JwFitoutSheet);
