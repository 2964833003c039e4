/** The one script a website takes in; a second tag of it on a page does nothing. */
import {JointwiseMatrix} from './element.js';

if (!customElements.get('jointwise-matrix')) customElements.define('jointwise-matrix', JointwiseMatrix);
