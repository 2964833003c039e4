import {ContextConsumer, createContext} from '@lit/context';
import {Speaking} from '../vocabulary/speaking.js';

/**
 * @import {Context} from '@lit/context'
 * @import {StationStore} from './store.js'
 * @import {Station} from './station.js'
 */

/** How the page hands its station down to whatever stands in it. */
export const stationContext = /** @type {Context<symbol, StationStore>} */ (createContext(Symbol('station')));

/** An element that has the page's station once it is connected, and is drawn anew when that changes. */
export class AtStation extends Speaking {
  #handed = new ContextConsumer(this, {context: stationContext});
  #deaf;

  get stationStore() {
    return /** @type {StationStore} */ (this.#handed.value);
  }

  /** @returns {Station} */
  get station() {
    return this.stationStore.present;
  }

  connectedCallback() {
    super.connectedCallback();
    this.#deaf = this.stationStore.listen((live) => this._stationChanged(live));
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    this.#deaf?.();
  }

  /** @param {boolean} _live - whether more is to come, as while a slider is dragged */
  _stationChanged(_live) {
    this.requestUpdate();
  }
}
