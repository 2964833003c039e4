/** An invented field-day line to start from, and what a new element starts as. */

export const EXAMPLE = {
  name: 'Field day',
  request: {
    elements: [
      {kind: 'joint', family: 'uhf'},
      {kind: 'cable', cable: 'rg_58', length_m: 3},
      {kind: 'joint', family: 'uhf'},
      {kind: 'part', loss_db: 0.1, vswr: 1.1, power_limit_w: 400, voltage_limit_v: 600, name: 'Arrester'},
      {kind: 'joint', family: 'uhf', adapter_to: 'n'},
      {kind: 'cable', cable: 'rg_213', length_m: 28},
      {kind: 'joint', family: 'n', exposure: 'exposed'},
    ],
    load: {kind: 'vswr', vswr: 2},
    power_w: 100,
    mode: 'ssb',
    band: '20m',
  },
};

export const FIRST_DOCUMENT = {lines: [EXAMPLE], current: 0};

/** What "add" offers; a measured part begins with its file. */
export const NEW_ELEMENTS = {
  cable: {kind: 'cable', cable: 'rg_213', length_m: 10},
  joint: {kind: 'joint', family: 'n'},
  adapter: {kind: 'joint', family: 'uhf', adapter_to: 'n'},
  part: {kind: 'part', loss_db: 0.2, name: 'Switch'},
};

/** What another way to give the antenna starts from; table and file begin with their data. */
export const NEW_LOADS = {
  vswr: {kind: 'vswr', vswr: 2},
  impedance: {kind: 'impedance', resistance_ohm: 50, reactance_ohm: 0},
};
