/** How wide an element is, for one that is laid out by hand: it renders again when that changes. */
export class Width {
  #host;
  #sizes;
  /** In whole pixels; before the first look, the one that was guessed. */
  pixels;

  /**
   * @param {import('lit').ReactiveControllerHost & Element} host
   * @param {number} guessed
   */
  constructor(host, guessed) {
    this.#host = host;
    this.pixels = guessed;
    this.#sizes = new ResizeObserver(([{contentRect}]) => this.#seen(Math.round(contentRect.width)));
    host.addController(this);
  }

  hostConnected() {
    this.#sizes.observe(this.#host);
  }

  hostDisconnected() {
    this.#sizes.disconnect();
  }

  #seen(pixels) {
    if (pixels === 0 || pixels === this.pixels) return;
    this.pixels = pixels;
    this.#host.requestUpdate();
  }
}
