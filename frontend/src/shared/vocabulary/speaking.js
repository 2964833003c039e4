import {ContextConsumer, createContext} from '@lit/context';
import {LitElement} from 'lit';

/** How the page hands its vocabulary down to whatever stands in it. */
export const vocabularyContext = createContext(Symbol('vocabulary'));

/** An element that speaks the page's vocabulary, which it has once it is connected; a view is made anew when it changes. */
export class Speaking extends LitElement {
  #handed = new ContextConsumer(this, {context: vocabularyContext});

  get vocabulary() {
    return this.#handed.value;
  }
}
