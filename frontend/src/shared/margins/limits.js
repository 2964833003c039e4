/** What limits the power through a joint, by the core's ids. */

/** As a heading. */
export const LIMIT_NAMES = {
  contact: 'Heat of the contact',
  cable: 'Heat of the cable',
  voltage: 'Voltage',
};

/** In a sentence, after "limited by". */
export const LIMITED_BY = {contact: 'its contact', cable: 'its cable', voltage: 'voltage'};
