/**
 * What of the page's own may be run: the policy of the saved file lets nothing else become script (Trusted Types).
 * Browsers without them take the text as it is.
 */
const asItIs = (text) => text;

/** @type {{createScript: (text: string) => any, createScriptURL: (text: string) => any}} */
export const ownScripts = /** @type {any} */ (globalThis).trustedTypes?.createPolicy('jointwise-script', {
  createScript: asItIs,
  createScriptURL: asItIs,
}) ?? {createScript: asItIs, createScriptURL: asItIs};
