/**
 * Loads the script for other websites from a file of its own, once, when the panel opens; resolves to its text.
 *
 * @param {string} address
 * @returns {() => Promise<string>}
 */
export function embedScript(address) {
  let text;
  const load = async () => {
    try {
      await import(new URL(address, document.baseURI).href);
      return await (await fetch(address)).text();
    } catch {
      text = undefined;
      throw new Error('The script for other websites could not be loaded.');
    }
  };
  return () => (text ??= load());
}
