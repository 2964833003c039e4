/** What the sweep view is told, with ranges: the core's own settings, what was measured, and what the line ended in. */

const ENDS = ['short', 'open', 'matched', 'antenna'];

export const sweepFields = ({requests: {sweep}}) => ({
  sweep: {
    length_tolerance: sweep.length_tolerance,
    window_shape: sweep.window_shape,
    of: {type: 'text', longest: 20, default: 'line', nullable: false},
    end: {type: 'choice', choices: ENDS, default: 'short', nullable: false},
  },
});
