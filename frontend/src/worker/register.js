/** Keeps the served page in the browser, so that it opens without a network. */
import {ownBuild} from './build.js';
import {TOOK_OVER, WHICH_BUILD, started, takeOver} from './messages.js';

/**
 * Register the service worker at `address`; does nothing where the browser has none, as over plain HTTP.
 *
 * `onUpdate(apply)` is called when a newer build waits, or has taken over because another open page let it; `apply()`
 * loads the page anew with it. Until then this page goes on with the files of its own build.
 *
 * @param {string} address
 * @param {(apply: () => void) => void} onUpdate
 */
export async function keepForOffline(address, onUpdate) {
  const {serviceWorker} = navigator;
  if (!serviceWorker) return;
  serviceWorker.addEventListener('message', ({data, ports}) => {
    if (data.kind === WHICH_BUILD) ports[0].postMessage(ownBuild());
    if (data.kind === TOOK_OVER && data.build !== ownBuild()) onUpdate(() => location.reload());
  });
  serviceWorker.startMessages();
  serviceWorker.controller?.postMessage(started());
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
