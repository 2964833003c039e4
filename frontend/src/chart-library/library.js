/**
 * The chart library with what the page's charts hold, and no more: lines and
 * points, bars, the Smith chart; shapes, annotations, a legend, words under the
 * pointer. It stands for the library's own core.js, which takes in every component.
 */
import 'plotly.js/build/plotcss';
import {register} from 'plotly.js/src/registry';
import methods from 'plotly.js/src/plot_api/plot_api';
import {resize} from 'plotly.js/src/plots/plots';
import annotations from 'plotly.js/src/components/annotations';
import colorscale from 'plotly.js/src/components/colorscale';
import fx from 'plotly.js/src/components/fx';
import legend from 'plotly.js/src/components/legend';
import modebar from 'plotly.js/src/components/modebar';
import shapes from 'plotly.js/src/components/shapes';
import en from 'plotly.js/src/locale-en';
import enUs from 'plotly.js/src/locale-en-us';
import bar from 'plotly.js/src/traces/bar';
import scatter from 'plotly.js/src/traces/scatter';
import scattersmith from 'plotly.js/src/traces/scattersmith';

// its parts call each other by these names
register(Object.entries(methods).map(([name, fn]) => ({moduleType: 'apiMethod', name, fn})));
// legends take defaults from shapes, and what stands under the pointer from legends
register([scatter, bar, scattersmith, annotations, shapes, colorscale, legend, fx, modebar, en, enUs]);

const {react, purge} = methods;
window.Plotly = {react, purge, Plots: {resize}};
