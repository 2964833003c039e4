import {css, html, nothing} from 'lit';
import {element, of, state} from '../shared/elements/element.js';
import {inside} from '../shared/elements/inside.js';
import {send} from '../shared/elements/send.js';
import {base} from '../shared/styles/base.js';

const roots = (root) => {
  const hosts = [...root.querySelectorAll('*')].filter(({shadowRoot}) => shadowRoot);
  return [root, ...hosts.flatMap(({shadowRoot}) => roots(shadowRoot))];
};

/** Whether a sheet lies over the page, which nothing beside it can be reached under. */
const isCovered = () => roots(document).some((root) => root.querySelector(':modal'));

/**
 * Says that something went wrong, in a sentence; what exactly is only in the report.
 *
 * @fires jw-again - the reader wants the page to try again
 */
export class JwFault extends element({
  _view: state(/** @type {string} */ (of)),
  _report: state(/** @type {string} */ (of)),
  /** How the report was copied: copied, by hand, or not yet. */
  _copied: state(/** @type {string} */ (of)),
}) {
  static styles = [
    base,
    css`
      dialog {
        position: fixed; inset: auto var(--space-3) calc(var(--foot) + var(--space-3)); z-index: 40; width: auto;
        max-width: 640px; margin: 0 auto;
        padding: var(--space-3) var(--space-4); color: inherit; background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round); box-shadow: 0 6px 30px #0004;
      }
      .acts { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-2); }
      textarea {
        width: 100%; min-height: 8rem; margin-top: var(--space-2); font: var(--type-small)/1.4 ui-monospace, monospace;
      }
      @media print { :host { display: none; } }
    `,
  ];

  constructor() {
    super();
    this._view = '';
    this._report = '';
    this._copied = '';
  }

  /**
   * @param {string} view - where it happened
   * @param {string} report
   */
  async show(view, report) {
    Object.assign(this, {_view: view, _report: report, _copied: ''});
    await this.updateComplete;
    if (this._dialog.open) return;
    if (isCovered()) this._dialog.showModal();
    else this._dialog.show();
  }

  get _dialog() {
    return /** @type {HTMLDialogElement} */ (inside(this.renderRoot, 'dialog'));
  }

  render() {
    return html`<dialog role="alertdialog" aria-labelledby="fault">
      <p id="fault" role="alert">${
        this._view ? `Something went wrong in ${this._view}. What you entered is kept; nothing was sent anywhere.` : ''
      }</p>
      <div class="acts">
        <button id="again" @click=${this._again}>Try again</button>
        <button id="report" @click=${this._copy}>Copy a report</button>
        <button @click=${this._close}>Close</button>
      </div>
      <p class="quiet" role="status">${this._copied === 'copied' ? 'Copied: version, view and fault.' : ''}</p>
      ${
        this._copied === 'by hand'
          ? html`<textarea readonly aria-label="Report to copy by hand" .value=${this._report}
              @focus=${({target}) => target.select()}></textarea>`
          : nothing
      }
    </dialog>`;
  }

  async _copy() {
    try {
      await navigator.clipboard.writeText(this._report);
      this._copied = 'copied';
    } catch {
      this._copied = 'by hand';
    }
  }

  _again() {
    this._close();
    send(this, 'jw-again');
  }

  _close() {
    this._dialog.close();
    this._view = '';
  }
}

customElements.define('jw-fault', JwFault);
