import {css, html} from 'lit';
import {base} from '../styles/base.js';
import {mathNode} from '../text/mathml.js';
import {reference} from '../text/source.js';
import {symbol} from '../text/symbol.js';
import {element, of, value} from './element.js';
import {reachable} from './reachable.js';

/** @import {Catalogue, Formula} from '../answers.js' */

/** Every formula of the core, with its symbols, validity and source, and all sources. */
class JwMethods extends element({catalogue: value(/** @type {Catalogue} */ (of))}) {
  static styles = [
    base,
    css`
      article { margin-top: var(--space-4); padding-top: var(--space-4); border-top: 1px solid var(--line); }
      .formula { overflow-x: auto; padding: var(--space-2) 0; font-size: var(--type-lead); }
      li { padding: var(--space-1) 0; font-size: var(--type-small); }
    `,
  ];

  updated() {
    reachable(this.renderRoot.querySelectorAll('.formula'));
  }

  render() {
    const {formulas, sources} = this.catalogue;
    return html`<p>
        The margin of a cell is the smallest of three limits: heat of the contact, heat of the cable, and voltage. The
        match is no limit of power: a joint whose return loss is less than asked for is refused. Each number on the page
        comes from the formulas below, and a cell’s derivation shows them with the values put in. A value with differing
        sources is a range: its cautious end decides.
      </p>
      ${formulas.map((formula) => this._formula(formula))}
      <h3>Sources</h3>
      <ul>
        ${sources.map((source) => html`<li>${reference(source)} <span class="kind">${source.seen}</span></li>`)}
      </ul>`;
  }

  /** @param {Formula} formula */
  _formula(formula) {
    const source = this.catalogue.sources.find(({id}) => id === formula.source);
    return html`<article data-formula=${formula.id}>
      <h3>${formula.title}</h3>
      <div class="formula">${mathNode(formula.mathml)}</div>
      <table class="plain">
        <tbody>
          ${formula.symbols.map(
            (entry) => html`<tr>
              <td>${symbol(entry.symbol)}</td><td>${entry.meaning}</td><td>${entry.unit === '1' ? '' : entry.unit}</td>
            </tr>`,
          )}
        </tbody>
      </table>
      <p class="quiet">Valid: ${formula.validity}. Source: ${source ? reference(source) : formula.source}.</p>
    </article>`;
  }
}

customElements.define('jw-methods', JwMethods);
