const HOLDS = 'holds everything you set.';

async function isCopied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/**
 * Copies a link; resolves to a notice for the reader, with the link where it can't be copied.
 *
 * @param {string} [address]
 */
export async function copyLink(address = location.href) {
  if (await isCopied(address)) return {text: `Link copied. It ${HOLDS}`, link: ''};
  return {text: `Copy this link; it ${HOLDS}`, link: address};
}

/**
 * The same of a page that is a file: its address means nothing elsewhere, but what stands behind its "#" does.
 *
 * @param {string} address
 * @param {(notice: {text: string, link: string}) => void} say - what becomes of the text
 */
export async function copyFileLink(address, say) {
  const fragment = address.slice(address.indexOf('#'));
  const run = async () => {
    const copied = await isCopied(fragment);
    say({
      text: `${copied ? 'Copied' : 'Copy this'}: put it behind the address of another copy of this page.`,
      link: copied ? '' : fragment,
    });
  };
  const {text, link} = await copyLink(address);
  return {
    text:
      `${text} This page is a file, so the link works on this device only. For others copy it as text, or give the ` +
      'address of the page on the web under Station.',
    link,
    action: {words: 'Copy as text', run},
  };
}
