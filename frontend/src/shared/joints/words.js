/** How the joint book speaks. */

export const FIELD_WORDS = {
  fitted_by: 'Fitted by',
  fitted_on: 'Fitted on',
  torque: 'Torque used',
  sealed: 'Sealed with',
  inspected_on: 'Last inspected',
  state: 'State',
  note: 'Note',
};

export const STATE_WORDS = {good: 'good', watch: 'to be watched', faulty: 'faulty'};

/** What an entry says. */
export const saidText = (field, value) => (field === 'state' ? STATE_WORDS[value] : value) || 'taken back';

/** A moment in the reader's own time: "2026-11-29 14:05". */
export const momentText = (at) => new Date(at).toLocaleString('sv-SE', {dateStyle: 'short', timeStyle: 'short'});
