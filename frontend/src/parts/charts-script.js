/**
 * Loads the chart library from a file of its own, once, when the first chart opens.
 *
 * @param {string} address
 * @returns {() => Promise<any>}
 */
export function chartScript(address) {
  let library;
  const load = () =>
    new Promise((resolve, reject) => {
      const script = document.createElement('script');
      script.src = address;
      script.onload = () => resolve(window.Plotly);
      script.onerror = () => {
        library = undefined;
        script.remove();
        reject(new Error('The chart library could not be loaded.'));
      };
      document.head.append(script);
    });
  return () => (library ??= load());
}
