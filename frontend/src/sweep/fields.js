/** What the sweep view is told, with ranges: the core's own settings, what was measured, and what the line ended in. */

const ENDS = ['short', 'open', 'matched', 'antenna'];

export const sweepFields = ({requests: {span, sweep}}) => ({
  sweep: {
    length_tolerance: sweep.length_tolerance,
    window_shape: sweep.window_shape,
    length_m: span.length_m,
    velocity_factor: span.velocity_factor,
    lowest_hz: span.lowest_hz,
    highest_hz: span.highest_hz,
    most_points: span.most_points,
    of: {type: 'text', longest: 20, default: 'line', nullable: false},
    end: {type: 'choice', choices: ENDS, default: 'short', nullable: false},
    way: {type: 'choice', choices: ['judge', 'hunt'], default: 'judge', nullable: false},
  },
});
