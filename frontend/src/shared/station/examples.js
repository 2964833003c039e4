/**
 * Stations to start from, invented.
 *
 * @import {StationChanges} from './station.js'
 *
 * @type {{id: string, name: string, story: string, station: StationChanges}[]}
 */
export const EXAMPLES = [
  {
    id: 'club_hf',
    name: 'Club station HF',
    story: 'A contest club with a kilowatt amplifier, digital weekends, masts in the weather.',
    station: {
      name: 'Club station HF',
      rigs: [
        {name: 'Transceiver', power_w: 100, behaviour: 'transceiver', family: 'uhf', gender: 'jack'},
        {name: 'Amplifier', power_w: 1000, behaviour: 'valve_amplifier', family: 'uhf', gender: 'jack'},
      ],
      rig: 1,
      antennas: [{name: 'Beam', load: {kind: 'vswr', vswr: 2}}],
      antenna: 0,
      gear: [
        {name: 'Amplifier', family: 'uhf', gender: 'jack', highest_frequency_hz: 30e6, power_w: 1000},
        {name: 'Tuner', family: 'uhf', gender: 'jack', highest_frequency_hz: 30e6, power_w: 1500},
        {name: 'Dummy load', family: 'n', gender: 'jack', highest_frequency_hz: 450e6, power_w: 1000},
        {name: 'Feed line', family: 'n', gender: 'plug', highest_frequency_hz: 30e6, power_w: 1000},
      ],
      cables: ['rg_213'],
      settings: {
        bands: ['160m', '80m', '60m', '40m', '30m', '20m', '17m', '15m', '12m', '10m'],
        power_w: 1000,
        mode: 'rtty',
        vswr: 2,
        exposure: 'exposed',
        added_sealing: true,
        matings_per_year: 20,
        service_life_years: 15,
        ambient_temperature_c: 35,
        solar_irradiance_w_per_m2: 800,
      },
    },
  },
  {
    id: 'vhf_uhf',
    name: '2 m / 70 cm',
    story: 'A repeater-style FM station in a car and at home, long overs.',
    station: {
      name: '2 m / 70 cm',
      rigs: [{name: 'FM transceiver', power_w: 50, behaviour: 'transceiver', family: 'uhf', gender: 'jack'}],
      rig: 0,
      antennas: [{name: 'Vertical', load: {kind: 'vswr', vswr: 1.5}}],
      antenna: 0,
      gear: [
        {name: 'FM transceiver', family: 'uhf', gender: 'jack', highest_frequency_hz: 450e6, power_w: 50},
        {name: 'Handheld', family: 'sma', gender: 'plug', highest_frequency_hz: 450e6, power_w: 5},
        {name: 'Vertical', family: 'n', gender: 'jack', highest_frequency_hz: 450e6, power_w: 50},
      ],
      cables: ['rg_58'],
      settings: {
        bands: ['6m', '2m', '70cm', '23cm'],
        band: '2m',
        power_w: 50,
        mode: 'fm',
        vibration: 'vehicle',
        exposure: 'sheltered',
        ambient_temperature_c: 50,
        matings_per_year: 50,
      },
    },
  },
  {
    id: 'microwave_bench',
    name: '23 cm / 3 cm portable bench',
    story: 'Hilltop microwave gear on a trestle table, plugged and unplugged on every outing.',
    station: {
      name: '23 cm / 3 cm portable bench',
      rigs: [{name: 'Transverter', power_w: 5, behaviour: 'keeps_forward', family: 'sma', gender: 'jack'}],
      rig: 0,
      antennas: [{name: 'Dish', load: {kind: 'vswr', vswr: 1.3}}],
      antenna: 0,
      gear: [
        {name: 'Transverter', family: 'sma', gender: 'jack', highest_frequency_hz: 10.5e9, power_w: 5},
        {name: 'Dish', family: 'n', gender: 'jack', highest_frequency_hz: 10.5e9, power_w: 5},
        {name: 'Power meter', family: 'n', gender: 'plug', highest_frequency_hz: 10.5e9, power_w: 1},
      ],
      settings: {
        bands: ['70cm', '23cm', '13cm', '5cm', '3cm'],
        band: '23cm',
        power_w: 5,
        mode: 'cw',
        vswr: 1.3,
        exposure: 'sheltered',
        altitude_m: 1500,
        ambient_temperature_c: 25,
        matings_per_year: 150,
        condition: 'worn',
        return_loss_asked_db: 16,
      },
    },
  },
];
