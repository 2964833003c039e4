/** How the form speaks of a kit's own fields; those of the site are spoken of as in the matrix. */
import {spokenFamilies} from '../shared/vocabulary/choices.js';

const GENDERS = {plug: 'plug (has the nut)', jack: 'jack'};

export const kitWords = ({families}) => ({
  'port.name': {label: 'What it is'},
  'port.family': {label: 'Connector', entries: spokenFamilies(families)},
  'port.gender': {label: 'Plug or jack', options: GENDERS},
  'port.highest_frequency_hz': {label: 'Used up to', factor: 1e6, unit: 'MHz'},
  'port.power_w': {label: 'Power, peak envelope'},
  'port.impedance_ohm': {label: 'Impedance, UHF types only'},
  'owned.one_family': {label: 'One end', entries: spokenFamilies(families)},
  'owned.one_gender': {label: 'Plug or jack', options: GENDERS},
  'owned.other_family': {label: 'Other end', entries: spokenFamilies(families)},
  'owned.other_gender': {label: 'Plug or jack', options: GENDERS},
  'owned.count': {label: 'How many'},
  'kit.most_in_series': {label: 'Most adapters in series'},
  'kit.most_loss_db': {label: 'Most loss of a pair'},
  'kit.impedance_steps': {label: '50 Ω may meet 75 Ω'},
  'kit.goal': {label: 'Aim', options: {fewest: 'fewest adapters', best_joints: 'best joints'}},
  'kit.search': {label: 'Search', options: {quick: 'quick', thorough: 'for a minute'}},
});
