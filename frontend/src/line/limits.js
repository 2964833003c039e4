/** What limits a part, after "limited by". */
export const LIMITED_BY = {heat: 'heat', voltage: 'voltage', match: 'mismatch'};
