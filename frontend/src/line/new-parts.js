/** What a new element of a line starts as, and another way to give its antenna. */

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
