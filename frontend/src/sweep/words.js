/** How the form speaks of a sweep. */

export const sweepWords = () => ({
  'sweep.end': {
    label: 'The line ended in',
    options: {short: 'a short', open: 'nothing (open)', matched: 'a matched load', antenna: 'the antenna of the line'},
  },
  'sweep.length_tolerance': {label: 'Lengths are right within', factor: 0.01, unit: '%'},
  'sweep.window_shape': {label: 'Window shape', step: 0.5},
  'sweep.length_m': {label: 'About how long', unit: 'm'},
  'sweep.velocity_factor': {label: 'Velocity factor of the cable', unit: ''},
  'sweep.lowest_hz': {label: 'Analyser from', factor: 1e6, unit: 'MHz'},
  'sweep.highest_hz': {label: 'Analyser up to', factor: 1e6, unit: 'MHz'},
  'sweep.most_points': {label: 'Points at most', unit: ''},
});
