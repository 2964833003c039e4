/** A limit as a bar: how much of it a power takes, and where it stands. */

/** As a share of the bar's length; what is over the limit has the rest. */
const LIMIT_AT = 0.75;

const length = (share) => `${share * 100}%`;

/** Where the limit stands. */
export const LIMIT_LENGTH = length(LIMIT_AT);

/** How far a bar reaches of which this share of the limit is taken. */
export const takenLength = (share) => length(Math.min(share * LIMIT_AT, 1));
