/** The chart library with the kinds of trace the page draws: lines and points, bars, the Smith chart. */
import Plotly from 'plotly.js/lib/core';
import bar from 'plotly.js/lib/bar';
import scattersmith from 'plotly.js/lib/scattersmith';

Plotly.register([bar, scattersmith]);
window.Plotly = Plotly;
