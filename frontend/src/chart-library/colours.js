/** The colour library of the charts, with the notations their colours come in: its other colour spaces stay away. */
import {modeHsl, modeLrgb, modeRgb, useMode} from 'culori/fn';

[modeRgb, modeHsl, modeLrgb].forEach((mode) => useMode(mode));

export {converter, formatHex, formatRgb, wcagContrast, wcagLuminance} from 'culori/fn';
