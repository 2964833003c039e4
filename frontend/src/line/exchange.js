/** A change the core proposes, as an edit: a cable by its name, a joint by its family, an adapter at the end meant. */
export function exchange({part, to}, parts, elements) {
  const at = parts[part].element;
  const first = parts.findIndex((one) => one.element === at);
  if (elements[at].kind === 'cable') return {kind: 'set', at, changes: {cable: to}};
  return {kind: 'set', at, changes: {[part === first ? 'family' : 'adapter_to']: to}};
}
