/** Tells those around an element what happened to it. */
export function send(from, name, detail) {
  from.dispatchEvent(new CustomEvent(name, {detail, bubbles: true, composed: true}));
}
