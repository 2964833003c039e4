import {ContextConsumer, createContext} from '@lit/context';
import {LitElement} from 'lit';

/**
 * @import {Context} from '@lit/context'
 * @import {Vocabulary} from './vocabulary.js'
 */

/** How the page hands its vocabulary down to whatever stands in it. */
export const vocabularyContext = /** @type {Context<symbol, Vocabulary>} */ (createContext(Symbol('vocabulary')));

/**
 * An element that speaks the page's vocabulary, which it has once it is connected. It renders again in other units, and
 * a view is made anew when other packs change the vocabulary.
 */
export class Speaking extends LitElement {
  #handed = new ContextConsumer(this, {context: vocabularyContext, subscribe: true});

  get vocabulary() {
    return /** @type {Vocabulary} */ (this.#handed.value);
  }
}
