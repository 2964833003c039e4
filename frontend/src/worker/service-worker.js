/**
 * Keeps the served page for use without a network.
 *
 * The build puts in BUILD: {version, files: {address: hash}}. A new build is a
 * new worker with a cache of its own; it waits until the page says so, so that
 * one visit never mixes two builds. The API always goes to the network.
 */
/* global BUILD */
import {TAKE_OVER} from './messages.js';

/**
 * What is used of a service worker's own scope.
 *
 * @typedef {object} Scope
 * @property {ServiceWorkerRegistration} registration
 * @property {{claim: () => Promise<void>}} clients
 * @property {() => Promise<void>} skipWaiting
 * @property {(type: string, heard: (event: any) => void) => void} addEventListener
 */
const scope = /** @type {Scope} */ (/** @type {unknown} */ (self));

const FAMILY = 'jointwise-';
const CACHE = FAMILY + BUILD.version;
const API = new URL('api/', scope.registration.scope).href;

async function keep() {
  const cache = await caches.open(CACHE);
  await cache.addAll(
    Object.entries(BUILD.files).map(([address, integrity]) => new Request(address, {integrity, cache: 'no-cache'})),
  );
}

async function forgetOthers() {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(FAMILY) && name !== CACHE).map((name) => caches.delete(name)),
  );
  await scope.clients.claim();
}

async function found(request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(request, {ignoreSearch: true})) ?? fetch(request);
}

scope.addEventListener('install', (event) => event.waitUntil(keep()));
scope.addEventListener('activate', (event) => event.waitUntil(forgetOthers()));
scope.addEventListener('fetch', (event) => {
  const {method, url} = event.request;
  if (method === 'GET' && url.startsWith(scope.registration.scope) && !url.startsWith(API))
    event.respondWith(found(event.request));
});
scope.addEventListener('message', ({data}) => {
  if (data.kind === TAKE_OVER) scope.skipWaiting();
});
