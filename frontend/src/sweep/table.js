/** What the sweep view is told, with ranges: the core's own settings, what was measured, and what the line ended in. */
import snapshot from '../../build/snapshot.json';

export const ENDS = ['short', 'open', 'matched', 'antenna'];

export const FIELDS = {
  ...snapshot.sweep,
  of: {type: 'text', longest: 20, default: 'line', nullable: false},
  end: {type: 'choice', choices: ENDS, default: 'short', nullable: false},
};

export const FIRST = Object.fromEntries(Object.entries(FIELDS).map(([field, {default: value}]) => [field, value]));

const PREFIX = 'sweep.';

/** The field a control's name "sweep.field" means. */
export const sweepField = (control) => (control.startsWith(PREFIX) ? FIELDS[control.slice(PREFIX.length)] : undefined);
