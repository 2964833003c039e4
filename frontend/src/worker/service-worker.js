/**
 * Keeps the served page for use without a network.
 *
 * The build puts in BUILD: {version, files: {address: hash}}. A new build is a
 * new worker with a cache of its own; it waits until the page says so, so that
 * one visit never mixes two builds. The API always goes to the network.
 */
/* global BUILD */
import {TAKE_OVER} from './messages.js';

const FAMILY = 'jointwise-';
const CACHE = FAMILY + BUILD.version;
const API = new URL('api/', self.registration.scope).href;

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
  await self.clients.claim();
}

async function found(request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(request, {ignoreSearch: true})) ?? fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(keep()));
self.addEventListener('activate', (event) => event.waitUntil(forgetOthers()));
self.addEventListener('fetch', (event) => {
  const {method, url} = event.request;
  if (method === 'GET' && url.startsWith(self.registration.scope) && !url.startsWith(API))
    event.respondWith(found(event.request));
});
self.addEventListener('message', ({data}) => {
  if (data.kind === TAKE_OVER) self.skipWaiting();
});
