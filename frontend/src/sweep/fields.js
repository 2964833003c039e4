/** What the sweep view is told, with ranges: the core's own settings, what was measured, and what the line ended in. */

const ENDS = ['short', 'open', 'matched', 'antenna'];

export const sweepFields = ({sweep}) => ({
  sweep: {
    ...sweep,
    of: {type: 'text', longest: 20, default: 'line', nullable: false},
    end: {type: 'choice', choices: ENDS, default: 'short', nullable: false},
  },
});
