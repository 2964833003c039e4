/** All of the one-file page's code that is not packed: unpacks the rest, and the licence texts once they are asked for. */
import {partText, runPart} from './part-text.js';

const UNABLE = 'The live page cannot be started from this file in this browser; only the built-in tables can be shown.';

function sayUnable() {
  const words = document.createElement('p');
  words.role = 'alert';
  words.textContent = UNABLE;
  document.querySelector('jw-app').prepend(words);
}

// code that was altered is kept from running by the policy, and nothing is thrown
runPart(document, 'page').then(() => customElements.get('jw-app') ?? sayUnable(), sayUnable);

// a file that was cut short has none
const licences = document.getElementById('licences');
const show = async () => (licences.querySelector('pre').textContent = await partText(document, 'licences'));
licences?.addEventListener('toggle', show, {once: true});
