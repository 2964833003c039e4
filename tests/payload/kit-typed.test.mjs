/** A port typed in one line. */
import assert from 'node:assert/strict';
import {test} from 'node:test';
import {typedPort} from '../../frontend/src/kit/form/typed-port.js';

const FAMILIES = [
  {id: 'uhf', name: 'UHF', also_called: ['PL-259 / SO-239']},
  {id: 'mini_uhf', name: 'Mini-UHF', also_called: ['Miniature UHF']},
  {id: 'n', name: 'N', also_called: ['Type N']},
  {id: 'n_75', name: 'N 75 Ω', also_called: ['75 Ω type N']},
  {id: 'bnc', name: 'BNC', also_called: ['BNC 50 Ω']},
  {id: 'c', name: 'C', also_called: ['Type C']},
  {id: '7_16', name: '7/16', also_called: ['7-16 DIN']},
  {id: '4_3_10', name: '4.3-10', also_called: []},
  {id: 'sma', name: 'SMA', also_called: ['Subminiature A']},
  {id: 'rp_sma', name: 'RP-SMA', also_called: ['Reverse polarity SMA']},
  {id: 'club', name: 'Club plug-in (pack Club)', also_called: []},
];
const RANGES = {highest_frequency_hz: {min: 1e5, max: 5e10}, power_w: {min: 0, max: 1e5}};
const BEFORE = {highest_frequency_hz: 54e6, power_w: 100};
const read = (text) => typedPort(text, FAMILIES, RANGES, BEFORE);

const PORTS = [
  ['Handheld SMA plug 450 5W', 'Handheld', 'sma', 'plug', 450e6, 5],
  ['Handheld, SMA plug, 450 MHz, 5 W', 'Handheld', 'sma', 'plug', 450e6, 5],
  ['SO-239', '', 'uhf', 'jack', 54e6, 100],
  ['Tuner so239 30 1kW', 'Tuner', 'uhf', 'jack', 30e6, 1000],
  ['Dipole lead PL259 30', 'Dipole lead', 'uhf', 'plug', 30e6, 100],
  ['Radio 2 N jack 1.3 GHz 10', 'Radio 2', 'n', 'jack', 1.3e9, 10],
  ['Analyser SMA female 6000 rx', 'Analyser', 'sma', 'jack', 6e9, 0],
  ['Receiver BNC socket 30 0', 'Receiver', 'bnc', 'jack', 30e6, 0],
  ['Module RP-SMA jack 2450 1', 'Module', 'rp_sma', 'jack', 2450e6, 1],
  ['Camera N 75 ohm male 900 rx', 'Camera', 'n_75', 'plug', 900e6, 0],
  ['Mast cable 7/16 plug 144', 'Mast cable', '7_16', 'plug', 144e6, 100],
  ['Amplifier 4.3-10 jack 144,5 500', 'Amplifier', '4_3_10', 'jack', 144.5e6, 500],
  ['Mobile miniature UHF plug 146', 'Mobile', 'mini_uhf', 'plug', 146e6, 100],
  ['plug BNC scope 30 rx', 'scope', 'bnc', 'plug', 30e6, 0],
  ['Antenna C N plug 450', 'Antenna C', 'n', 'plug', 450e6, 100],
  ['5W N jack 450', '5W', 'n', 'jack', 450e6, 100],
  ['Extra club plug-in jack 10', 'Extra', 'club', 'jack', 10e6, 100],
];

for (const [text, name, family, gender, highest_frequency_hz, power_w] of PORTS) {
  test(`“${text}” is read`, () => {
    assert.deepEqual(read(text), {port: {name, family, gender, highest_frequency_hz, power_w}});
  });
}

const REFUSED = [
  ['', /^No connector in “”; name one, as SO-239/],
  ['Handheld 450 5W', /No connector/],
  ['Handheld SMA 450', /^“SMA”: plug or jack\?$/],
  ['Radio N jack 1,500', /is that 1500 MHz or 1\.5 MHz\?$/],
  ['Radio N jack 2m', /“2m” after the connector: give the highest frequency in MHz/],
  ['Radio N jack 450 5 7', /“7”: there is one frequency and one power before it already\.$/],
  ['Radio N jack 99 GHz', /Used up to is “99GHz”; allowed: 0\.1 to 50000 MHz/],
  ['Radio N jack 30 200kW', /Power is “200kW”; allowed: 0 to 100000 W/],
];

for (const [text, words] of REFUSED) {
  test(`“${text}” is asked back`, () => {
    const {port, problem} = read(/** @type {string} */ (text));

    assert.equal(port, undefined);
    assert.match(problem ?? '', /** @type {RegExp} */ (words));
  });
}
