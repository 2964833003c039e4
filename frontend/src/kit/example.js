/** An invented field-day kit to start from, and what a new port and a new adapter start as. */

const port = (name, family, gender, megahertz, power_w) => ({
  name,
  family,
  gender,
  highest_frequency_hz: megahertz * 1e6,
  power_w,
});

export const EXAMPLE = {
  ports: [
    port('Transceiver', 'uhf', 'jack', 54, 100),
    port('Tuner', 'uhf', 'jack', 54, 100),
    port('Dipole feed line', 'uhf', 'plug', 30, 100),
    port('Dummy load', 'n', 'jack', 450, 100),
    port('Analyser', 'sma', 'jack', 450, 0),
    port('Handheld', 'sma', 'plug', 450, 5),
    port('Vertical', 'n', 'jack', 450, 50),
    port('Link antenna', 'rp_sma', 'plug', 2450, 0),
    port('Patch lead', 'bnc', 'plug', 450, 50),
    port('Receive loop', 'f', 'plug', 30, 0),
  ],
  pairs: [
    [0, 1],
    [0, 2],
    [0, 3],
    [1, 2],
    [2, 4],
    [3, 5],
    [3, 8],
    [4, 6],
    [4, 7],
    [4, 8],
    [4, 9],
    [5, 6],
    [5, 8],
  ],
  owned: [
    {one_family: 'uhf', one_gender: 'plug', other_family: 'bnc', other_gender: 'jack', count: 1},
    {one_family: 'n', one_gender: 'plug', other_family: 'bnc', other_gender: 'jack', count: 1},
  ],
};

/** A kit of one's own begins with nothing; every two of its ports must join. */
export const EMPTY = {ports: []};

export const NEW_PORT = port('', 'n', 'jack', 54, 100);
export const NEW_ADAPTER = {one_family: 'n', one_gender: 'plug', other_family: 'uhf', other_gender: 'jack', count: 1};
