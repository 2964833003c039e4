/**
 * The matrix as a page of its own, to stand in a frame: for sites that allow no script.
 *
 * The address tells the element's attributes in its query, and the scenario in
 * its fragment, as in a link to the page: embed.html?theme=dark&lang=de#vswr=2.
 * Without `src` the server that this page comes from answers. The height goes
 * to the page around it, which may fit the frame to it.
 */
const given = new URLSearchParams(location.search);
const matrix = document.createElement('jointwise-matrix');
const {observedAttributes} = /** @type {typeof import('./element.js').JointwiseMatrix} */ (matrix.constructor);
for (const name of observedAttributes) {
  const value = given.get(name);
  if (value !== null && name !== 'link') matrix.setAttribute(name, value);
}
const lang = given.get('lang');
if (lang !== null) document.documentElement.lang = lang;
matrix.setAttribute('link', new URL(`./${location.hash}`, location.href).href);
document.body.append(matrix);

const tell = () =>
  parent.postMessage({type: 'jointwise-height', height: Math.ceil(matrix.getBoundingClientRect().height)}, '*');
new ResizeObserver(tell).observe(matrix);
addEventListener('hashchange', () => location.reload());
