import {css, html, nothing, svg} from 'lit';
import {element, of, value} from '../../shared/elements/element.js';
import {Width} from '../../shared/elements/width.js';
import {base} from '../../shared/styles/base.js';
import {Speaking} from '../../shared/vocabulary/speaking.js';
import {endWords} from '../names.js';
import {MOST_DRAWN, laidOut, markOf, spokenGraph} from './graph.js';

/**
 * @import {Port} from '../edits.js'
 * @import {Answer} from './answer.js'
 */

const FIRST_WIDTH = 720;
const LONGEST = 22;

const cut = (text) => (text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text);

/** The ports, and a line for every pair: solid with the number of adapters, dashed with "no" where nothing joins it. */
class JwKitGraph extends element(
  {
    result: value(/** @type {Answer} */ (of)),
    /** The ports of the request that was answered. */
    ports: value(/** @type {Port[]} */ (of)),
    /** What the ports are called. */
    names: value(/** @type {string[]} */ (of)),
  },
  Speaking,
) {
  static styles = [
    base,
    css`
      svg { display: block; width: 100%; height: auto; }
      text { fill: var(--ink); font-size: var(--type-fine); font-weight: 600; }
      .end { fill: var(--soft); font-size: var(--type-fine); font-weight: 400; }
      .dot { fill: var(--card); stroke: var(--ink); stroke-width: 2; }
      .line { fill: none; stroke: var(--edge); stroke-width: 2; }
      [data-added] .line { stroke: var(--ink); stroke-width: 3; }
      [data-apart] .line { stroke: var(--alarm); stroke-dasharray: 5 5; }
      .plate { fill: var(--card); stroke: var(--edge); }
      [data-added] .plate { stroke: var(--ink); }
      [data-apart] .plate { stroke: var(--alarm); }
      .mark { font-size: var(--type-fine); text-anchor: middle; }
      .legend { margin-top: var(--space-2); }
      @media print { svg { max-height: 110mm; } }
    `,
  ];

  constructor() {
    super();
    this._width = new Width(this, FIRST_WIDTH);
  }

  render() {
    const {ports, result} = this;
    if (ports.length > MOST_DRAWN)
      return html`<p class="quiet">More than ${MOST_DRAWN} ports are not drawn; the list below has every pair.</p>`;
    const drawn = laidOut(
      ports.length,
      result.pairs.map((pair) => pair.ports),
      this._width.pixels,
    );
    return html`<svg viewBox="0 0 ${this._width.pixels} ${drawn.height}" role="img"
      aria-label=${spokenGraph(ports.length, result)}>
        ${drawn.lines.map(
          ({path}, at) =>
            svg`<g ?data-added=${this._added(at)} ?data-apart=${this._apart(at)}><path class="line"
              d=${path}></path></g>`,
        )}
        ${drawn.lines.map(({mark}, at) => this._mark(mark, at))}
        ${drawn.ports.map((place, at) => this._port(place, at))}
      </svg>
      <p class="quiet legend">The number on a line is how many adapters join the two; 0: they mate
        directly. Thick: some must be added. Dashed, “no”: can’t be joined.${
          result.pairs.some(({trap}) => trap) ? ' “!”: looks as if it fits without, but must not be tried.' : nothing
        }</p>`;
  }

  _apart(at) {
    return this.result.pairs[at].joined === null;
  }

  _added(at) {
    const {joined, joined_by_owned: owned} = this.result.pairs[at];
    return joined !== null && owned === null;
  }

  _mark({x, y}, at) {
    const words = markOf(this.result.pairs[at]);
    const width = 10 + 7 * words.length;
    return svg`<g data-line=${this.result.pairs[at].ports.join('-')} ?data-added=${this._added(at)}
      ?data-apart=${this._apart(at)}>
      <rect class="plate" x=${x - width / 2} y=${y - 9} width=${width} height="18" rx="5"></rect>
      <text class="mark" x=${x} y=${y + 4}>${words}</text>
    </g>`;
  }

  _port({x, y, anchor, label}, at) {
    const {family, gender} = this.ports[at];
    return svg`<g>
      <circle class="dot" cx=${x} cy=${y} r="7"></circle>
      <text x=${x + label.x} y=${y + label.y} text-anchor=${anchor}>${cut(this.names[at])}</text>
      <text class="end" x=${x + label.x} y=${y + label.y + 13}
        text-anchor=${anchor}>${endWords(this.vocabulary.lists.families, family, gender)}</text>
    </g>`;
  }
}

customElements.define('jw-kit-graph', JwKitGraph);
