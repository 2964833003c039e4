/**
 * An invented field-day line to start from; transmitter, antenna and site are the station's.
 *
 * @type {import('./document.js').Line}
 */
export const EXAMPLE = {
  name: 'Field day',
  request: {
    elements: [
      {kind: 'joint', family: 'uhf'},
      {kind: 'cable', cable: 'rg_58', length_m: 3},
      {kind: 'joint', family: 'uhf'},
      {
        kind: 'part',
        what: 'arrester',
        loss_db: 0.1,
        vswr: 1.1,
        power_limit_w: 400,
        voltage_limit_v: 600,
        name: 'Arrester',
      },
      {kind: 'joint', family: 'uhf', adapter_to: 'n'},
      {kind: 'cable', cable: 'rg_213', length_m: 28},
      {kind: 'joint', family: 'n', exposure: 'exposed'},
    ],
  },
};
