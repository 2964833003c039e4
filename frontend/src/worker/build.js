/**
 * Which build the served page is of. Every file it asks for names the build, so that the service worker of another one
 * knows that it is not its own that is wanted.
 */
const NAMED = 'build';

/** The page's own build; empty where it was not built for serving. */
export const ownBuild = () => document.querySelector(`meta[name=${NAMED}]`)?.getAttribute('content') ?? '';

/**
 * The address of a file of the page's own build.
 *
 * @param {string} address
 */
export const ofBuild = (address) => `${address}?${NAMED}=${ownBuild()}`;

/**
 * The build that an address names; null where it names none.
 *
 * @param {string} url
 */
export const buildIn = (url) => new URL(url).searchParams.get(NAMED);
