import {css, html, nothing, svg} from 'lit';
import {element, of, state, value} from '../../shared/elements/element.js';
import {send} from '../../shared/elements/send.js';
import {stepOf} from '../../shared/margins/scale.js';
import {base} from '../../shared/styles/base.js';
import {power, quantity} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {marginWords, numbered, spokenPart} from '../reading.js';
import {wattWords} from '../sides.js';
import {AXIS, ROW_HEIGHT, RUNS, laidOut, twoLines} from './drawing.js';

/**
 * @import {Element} from '../../shared/lines/document.js'
 * @import {LineResult} from '../result.js'
 */

const FIRST_WIDTH = 720;
/** What is drawn on the box of a part, from its middle. */
const MARKS = {
  measured: 'm-12 6l6 -10l6 7l6 -9l6 6',
  transformer: 'm-5 -9q9 3 0 6q9 3 0 6q9 3 0 6m10 -18q-9 3 0 6q-9 3 0 6q-9 3 0 6',
  tuner: 'm-14 0h6q2 -8 4 0q2 -8 4 0q2 -8 4 0h10m-4 0v9',
  load: 'm-12 0h3l2 -6l4 12l4 -12l4 12l2 -6h5',
};
/** Room for a margin, or the word that stands for it. */
const CHIP = 56;

/**
 * The line as it runs from the transmitter to the antenna; a part opens its derivation.
 *
 * @fires jw-line-open
 */
class JwLineDrawing extends element({
  result: value(/** @type {LineResult} */ (of)),
  /** Those the result is of. */
  elements: value(/** @type {Element[]} */ (of)),
  /** Place of the element whose derivation is open. */
  open: {type: String},
  _width: state(/** @type {number} */ (of)),
}) {
  static styles = [
    base,
    css`
      svg { display: block; width: 100%; height: auto; overflow: visible; }
      text { fill: var(--ink); font-size: var(--type-fine); text-anchor: middle; }
      .name { font-size: var(--type-fine); }
      .soft { fill: var(--soft); font-size: var(--type-fine); letter-spacing: -0.03em; }
      .margin { font-weight: 700; font-size: var(--type-fine); }
      .wire { fill: none; stroke: var(--edge); stroke-width: 2.5; }
      .turn { stroke-dasharray: 2 4; stroke-width: 2; }
      .body { stroke: var(--ink); stroke-width: 1.2; }
      .own { fill: var(--card); stroke: var(--ink); stroke-width: 1.5; }
      .hit { fill: transparent; rx: 8px; }
      .part { cursor: pointer; outline: none; }
      .part:hover .hit { fill: color-mix(in srgb, var(--ink) 8%, transparent); }
      .part:focus-visible .hit { stroke: var(--focus); stroke-width: 3; }
      .part[data-open] .hit { fill: var(--accent-wash); }
      .weakest { fill: none; stroke: var(--ink); stroke-width: 3; }
      .weak { font-weight: 700; font-size: var(--type-fine); }
      .refused { fill: var(--refused); }
    `,
  ];

  constructor() {
    super();
    this._width = FIRST_WIDTH;
    this._sizes = new ResizeObserver(([{contentRect}]) => {
      if (contentRect.width > 0) this._width = Math.round(contentRect.width);
    });
  }

  connectedCallback() {
    super.connectedCallback();
    this._sizes.observe(this);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this._sizes.disconnect();
  }

  render() {
    const {parts} = this.result;
    const items = [
      {kind: 'start'},
      ...parts.map((part) => ({kind: part.kind, length_m: this.elements[part.element]?.length_m})),
      ...(parts.at(-1)?.kind === 'load' ? [] : [{kind: 'end'}]),
    ];
    const drawn = laidOut(items, this._width);
    return html`<svg viewBox="0 0 ${this._width} ${drawn.height}" role="group"
      aria-label="The line from the transmitter to the antenna">
      ${drawn.items.map((item, at) => this._wire(item, drawn.items[at + 1]))}
      ${drawn.items.map((item, at) => this._item(item, parts[at - 1], at - 1))}
    </svg>`;
  }

  _wire({x, y, width, row}, next) {
    const from = x + width;
    if (!next) return nothing;
    const [here, there] = [x + width / 2, next.x + next.width / 2];
    if (next.row === row) return svg`<path class="wire" d="M${here} ${y + AXIS}H${there}"></path>`;
    const [low, axis] = [y + ROW_HEIGHT - 1, next.y + AXIS];
    return svg`<path class="wire turn" d="M${here} ${y + AXIS}H${from - 3}V${low}H3V${axis}H${there}"></path>`;
  }

  _item(item, part, at) {
    const middle = item.x + item.width / 2;
    const axis = item.y + AXIS;
    if (item.kind === 'start') return this._end(middle, item.y, 'Transmitter', this._sent(), transmitter(middle, axis));
    if (item.kind === 'end') return this._end(middle, item.y, 'Antenna', this._delivered(), antenna(middle, axis));
    const weakest = at === this.result.weakest;
    const step = part.margin_db === null || part.refused_by ? undefined : stepOf(part.margin_db);
    const [fill, ink] =
      step === undefined
        ? ['var(--refused)', 'var(--refused-ink)']
        : [`var(--step-${step})`, `var(--step-${step}-ink)`];
    const open = String(part.element) === this.open;
    const words = twoLines(`${numbered(part)}`, item.width - 6);
    const top = item.y + 30 - 13 * (words.length - 1);
    const show = () => send(this, 'jw-line-open', {open: String(part.element)});
    const drawn = svg`<title>${spokenPart(part, weakest)}</title>
      <rect class="hit" x=${item.x + 1} y=${item.y + 2} width=${item.width - 2} height=${ROW_HEIGHT - 8} rx="8"></rect>
      ${words.map((line, row) => svg`<text class="name" x=${middle} y=${top + 13 * row}>${line}</text>`)}
      ${this._body(item, middle, axis, fill)}
      ${
        weakest
          ? svg`<rect class="weakest" x=${item.x + 4} y=${axis - 19} width=${item.width - 8} height="60" rx="8"></rect>`
          : nothing
      }
      <rect x=${middle - CHIP / 2} y=${axis + 17} width=${CHIP} height="20" rx="5" style="fill:${fill}"></rect>
      <text class="margin" x=${middle} y=${axis + 31} style="fill:${ink}">${marginWords(part).replace(' dB', '')}</text>
      <text class="soft" x=${middle} y=${axis + 53}>
        ${part.kind === 'load' ? this._delivered()[0] : lossWords(part.loss_db)}
      </text>
      ${weakest ? svg`<text class="weak" x=${middle} y=${axis + 67}>weakest</text>` : nothing}`;
    if (part.kind === 'load') return svg`<g data-part=${at}>${drawn}</g>`;
    return svg`<g class="part" role="button" tabindex="0" data-part=${at} ?data-open=${open}
        @click=${show} @keydown=${(event) => ['Enter', ' '].includes(event.key) && (event.preventDefault(), show())}>
      ${drawn}
    </g>`;
  }

  _body(item, middle, axis, fill) {
    const style = `fill:${fill}`;
    if (RUNS.includes(item.kind)) {
      const [left, right] = [item.x + 4, item.x + item.width - 4];
      if (item.kind === 'wires')
        return svg`<rect style=${style} x=${left} y=${axis - 6} width=${right - left} height="12"></rect>
          <path class="body" d="M${left} ${axis - 6}H${right}M${left} ${axis + 6}H${right}"></path>`;
      return svg`<rect class="body" style=${style}
        x=${left} y=${axis - 6} width=${right - left} height="12" rx=${item.kind === 'cable' ? 6 : 0}></rect>`;
    }
    if (item.kind === 'joint') {
      return svg`<path class="body" style=${style}
          d="M${middle - 15} ${axis - 8}h11v-5h8v5h11v16h-11v5h-8v-5h-11z"></path>
        <path class="body" d="M${middle} ${axis - 13}v26"></path>`;
    }
    const mark =
      item.kind in MARKS ? svg`<path class="wire" d="M${middle} ${axis}${MARKS[item.kind]}"></path>` : nothing;
    return svg`<rect class="body" style=${style}
      x=${middle - 19} y=${axis - 14} width="38" height="28" rx="3"></rect>${mark}`;
  }

  /** @param {string[]} said - below it, in one line or two */
  _end(middle, y, name, said, shape) {
    const [words, more] = said;
    return svg`<g>
      <text class="name" x=${middle} y=${y + 30}>${name}</text>${shape}
      <text class="margin" x=${middle} y=${y + AXIS + 31}>${words}</text>
      ${more ? svg`<text class="soft" x=${middle} y=${y + AXIS + 47}>${more}</text>` : nothing}
    </g>`;
  }

  /** What goes out, and of how much where the transmitter folds back. */
  _sent() {
    const {power_w, transmitter: sender} = this.result;
    return sender.folded ? [quantity(sender.forward_w, 'W', 2), `of ${power(sender.set_w)}`] : [power(power_w)];
  }

  _delivered() {
    const {delivered_w, delivered_low_w, power_w, loss_db} = this.result;
    if (power_w === 0) return [lossWords(loss_db)];
    const [likely, worst] = [wattWords(delivered_w), wattWords(delivered_low_w)];
    return likely === worst ? [likely] : [likely, `worst ${worst}`];
  }
}

function transmitter(x, y) {
  return svg`<rect class="own" x=${x - 19} y=${y - 14} width="38" height="28" rx="4"></rect>
    <path class="wire" d="M${x - 9} ${y}q4.5 -11 9 0t9 0"></path>`;
}

function antenna(x, y) {
  return svg`<path class="own"
    d="M${x} ${y + 12}V${y - 4}M${x - 14} ${y - 20}L${x} ${y - 4}L${x + 14} ${y - 20}Z"></path>`;
}

customElements.define('jw-line-drawing', JwLineDrawing);
