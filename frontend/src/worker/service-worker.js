/**
 * Keeps the served page for use without a network.
 *
 * The build puts in BUILD: {version, files: {address: hash}}. A new build is a
 * new worker with a cache of its own; it waits until a page says so. Other pages
 * that are open then go on with the files of their own build, which are kept as
 * long as one of them may want them, so that no page ever mixes two builds. The
 * API always goes to the network.
 */
/* global BUILD */
import {buildIn} from './build.js';
import {STARTED, TAKE_OVER, tookOver, whichBuild} from './messages.js';

/**
 * What is used of a service worker's own scope.
 *
 * @typedef {object} Scope
 * @property {ServiceWorkerRegistration} registration
 * @property {{claim: () => Promise<void>, matchAll: (options: object) => Promise<readonly any[]>}} clients
 * @property {() => Promise<void>} skipWaiting
 * @property {(type: string, heard: (event: any) => void) => void} addEventListener
 */
const scope = /** @type {Scope} */ (/** @type {unknown} */ (self));

const FAMILY = 'jointwise-';
const CACHE = FAMILY + BUILD.version;
/** How long a page may take to say which build it is of. */
const PATIENCE_MS = 5_000;
const API = new URL('api/', scope.registration.scope).href;

async function keep() {
  const cache = await caches.open(CACHE);
  await cache.addAll(
    Object.entries(BUILD.files).map(([address, integrity]) => new Request(address, {integrity, cache: 'no-cache'})),
  );
}

const pages = () => scope.clients.matchAll({type: 'window', includeUncontrolled: true});

async function begin() {
  await scope.clients.claim();
  for (const page of await pages()) page.postMessage(tookOver(BUILD.version));
}

/** The build of a page; undefined where it does not say, as one that is asleep. */
function buildOf(page) {
  const {port1, port2} = new MessageChannel();
  return new Promise((tell) => {
    port1.onmessage = ({data}) => tell(data);
    setTimeout(() => tell(undefined), PATIENCE_MS);
    page.postMessage(whichBuild(), [port2]);
  });
}

async function forgetUnused() {
  const asked = (await pages()).filter(({frameType}) => frameType !== 'nested');
  const used = await Promise.all(asked.map(buildOf));
  const names = (await caches.keys()).filter((name) => name.startsWith(FAMILY));
  const {installing, waiting} = scope.registration;
  if (installing || waiting || used.includes(undefined)) return;
  const wanted = [BUILD.version, ...used].map((build) => FAMILY + build);
  await Promise.all(names.filter((name) => !wanted.includes(name)).map((name) => caches.delete(name)));
}

/** A file of the build that is asked for; another build's is none, whoever has it. */
async function found(request) {
  const named = request.mode === 'navigate' ? '' : buildIn(request.url);
  const name = FAMILY + (named || BUILD.version);
  // opening a cache that is not there would make it
  const cache = (await caches.has(name)) ? await caches.open(name) : undefined;
  const kept = await cache?.match(request, {ignoreSearch: true});
  if (kept) return kept;
  return name === CACHE ? fetch(request) : Response.error();
}

scope.addEventListener('install', (event) => event.waitUntil(keep()));
scope.addEventListener('activate', (event) => event.waitUntil(begin()));
scope.addEventListener('fetch', (event) => {
  const {method, url} = event.request;
  if (method === 'GET' && url.startsWith(scope.registration.scope) && !url.startsWith(API))
    event.respondWith(found(event.request));
});
scope.addEventListener('message', (event) => {
  if (event.data.kind === TAKE_OVER) scope.skipWaiting();
  if (event.data.kind === STARTED) event.waitUntil(forgetUnused());
});
