/** A formula's symbol taken apart: Greek letters, a subscript after the first underscore. */

const GREEK = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  Gamma: 'Γ',
  delta: 'δ',
  Delta: 'Δ',
  epsilon: 'ε',
  eps: 'ε',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  lamda: 'λ',
  mu: 'µ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
};

/** The letter of a symbol and its subscript, empty when it has none. */
export function letters(name) {
  const [letter, ...rest] = name.split('_');
  return [GREEK[letter] ?? letter, rest.map((part) => GREEK[part] ?? part).join(', ')];
}
