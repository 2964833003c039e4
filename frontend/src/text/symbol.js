/** A formula's symbol as it is printed: Greek letters, a subscript after the first underscore. */
import {html} from 'lit';

const GREEK = {
  alpha: 'α', beta: 'β', gamma: 'γ', Gamma: 'Γ', delta: 'δ', Delta: 'Δ', epsilon: 'ε', eps: 'ε', eta: 'η',
  theta: 'θ', kappa: 'κ', lambda: 'λ', lamda: 'λ', mu: 'µ', pi: 'π', rho: 'ρ', sigma: 'σ', tau: 'τ', phi: 'φ',
  chi: 'χ', psi: 'ψ', omega: 'ω',
};

export function symbol(name) {
  const [letter, ...rest] = name.split('_');
  const under = rest.map((part) => GREEK[part] ?? part).join(', ');
  return html`<var>${GREEK[letter] ?? letter}${under ? html`<sub>${under}</sub>` : ''}</var>`;
}
