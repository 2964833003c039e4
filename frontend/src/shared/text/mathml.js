/** MathML of the catalogue's formulas: data of the core, parsed once and cloned. */

const asItIs = (text) => text;

/** The saved file's policy lets nothing else be parsed as markup but this and Lit's templates. */
const MARKUP = /** @type {any} */ (globalThis).trustedTypes?.createPolicy('jointwise-formula', {
  createHTML: asItIs,
}) ?? {
  createHTML: asItIs,
};

const parsed = new Map();

/** A node showing `markup`; the same markup is parsed only once. */
export function mathNode(markup) {
  if (!parsed.has(markup)) {
    const template = document.createElement('template');
    template.innerHTML = MARKUP.createHTML(markup);
    const math = template.content.querySelector('math');
    math?.setAttribute('display', 'block');
    parsed.set(markup, template);
  }
  return parsed.get(markup).content.cloneNode(true);
}
