/** Keeps the served page in the browser, so that it opens without a network. */
import {takeOver} from './messages.js';

/**
 * Register the service worker at `address`; does nothing where the browser has none, as over plain HTTP.
 *
 * `onUpdate(apply)` is called when a newer build waits; `apply()` loads the page anew with it,
 * also when another open page has let it take over meanwhile.
 *
 * @param {string} address
 * @param {(apply: () => void) => void} onUpdate
 */
export async function keepForOffline(address, onUpdate) {
  const {serviceWorker} = navigator;
  if (!serviceWorker) return;
  const registration = await serviceWorker.register(address);
  const apply = () => {
    if (!registration.waiting) return location.reload();
    serviceWorker.addEventListener('controllerchange', () => location.reload(), {once: true});
    registration.waiting.postMessage(takeOver());
  };
  // a first build has no build before it and takes over by itself
  const offer = () => registration.waiting && serviceWorker.controller && onUpdate(apply);
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', offer));
  offer();
}
