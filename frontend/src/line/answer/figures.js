/** Charts of a line as data for the chart library. */
import {CONFIG, PAGE_COLOURS, atTheLimit, frame, translucent} from '../../shared/charts/figure.js';
import {frequency} from '../../shared/text/format.js';
import {lossWords} from '../../shared/text/loss.js';
import {scaleOf} from '../../shared/text/measures.js';
import {numbered} from '../reading.js';
import {higherOf} from '../sides.js';

/**
 * @import {Colours} from '../../shared/charts/figure.js'
 * @import {LineResult, SpreadResult} from '../result.js'
 */

const WHOLE = 'Whole line';
const ROW_PX = 24;
const FRAME_PX = 70;
/** Of a band's slot, what its points fill; the rest keeps bands apart. */
const [SLOT_START, SLOT_SHARE] = [0.08, 0.84];

const sentBack = ({transmitter: {folded}}) => (folded ? 'Held back and reflected' : 'Reflected at the transmitter');

/**
 * The shares of the loss in the order the power meets them: {name, from, loss}.
 *
 * @param {LineResult} result
 */
export function lossSteps(result) {
  const shares = [
    ...(result.mismatch_db > 0 ? [{name: sentBack(result), loss: result.mismatch_db}] : []),
    ...result.parts
      .filter(({kind}) => kind !== 'load')
      .map((part) => ({name: numbered(part), loss: part.loss_db ?? 0})),
  ];
  let from = 0;
  const steps = shares.map((share) => {
    const step = {...share, from};
    from += share.loss;
    return step;
  });
  return [
    ...steps,
    {name: WHOLE, from: 0, loss: result.loss_db ?? from},
    ...(result.loss_high_db === null ? [] : [{name: `${WHOLE}, at worst`, from: 0, loss: result.loss_high_db}]),
  ];
}

/**
 * Loss shares as a waterfall: each bar starts where the one before it ended.
 *
 * @param {LineResult} result
 */
export function lossFigure(result, colours = PAGE_COLOURS) {
  const steps = lossSteps(result);
  const rows = steps.map((_, at) => at);
  const plain = frame({x: 'loss, dB', y: '', colours, height: steps.length * ROW_PX + FRAME_PX});
  return {
    data: [
      {
        type: 'bar',
        orientation: 'h',
        y: rows,
        base: steps.map(({from}) => from),
        x: steps.map(({loss}) => loss),
        marker: {color: steps.map(({name}) => (name.startsWith(WHOLE) ? colours.ink : colours.band))},
        text: steps.map(({loss}) => lossWords(loss)),
        textposition: 'outside',
        cliponaxis: false,
        customdata: steps.map(({name}) => name),
        hovertemplate: '%{customdata}: %{text}<extra></extra>',
      },
    ],
    layout: {
      ...plain,
      margin: {...plain.margin, r: 64},
      xaxis: {...plain.xaxis, rangemode: 'tozero'},
      yaxis: {
        ...plain.yaxis,
        autorange: 'reversed',
        tickvals: rows,
        ticktext: steps.map(({name}) => short(name)),
        showgrid: false,
      },
    },
    config: CONFIG,
  };
}

const short = (name) => (name.length > 22 ? `${name.slice(0, 21)}…` : name);

/** Bands side by side, each as wide as the others; points keep their order within their band. */
export function bandSlots({sweep, bands}) {
  const count = sweep.band.filter((id) => id === sweep.band[0]).length;
  const x = sweep.band.map((_, at) => {
    const within = at % count;
    return Math.floor(at / count) + SLOT_START + (SLOT_SHARE * within) / Math.max(count - 1, 1);
  });
  return {count, x, names: bands.map(({column}) => column.name)};
}

/** Values with a gap after each band, so that the curve does not run across what lies between. */
const gapped = (values, count) => values.flatMap((value, at) => (at % count === count - 1 ? [value, null] : [value]));

function box(at, low, high) {
  if (low === null || high === null) return {x: [], y: []};
  const [left, right] = [at + SLOT_START, at + SLOT_START + SLOT_SHARE];
  return {x: [left, right, right, left, left, null], y: [low, low, high, high, low, null]};
}

/** The range between the outer percentiles of a spread, band by band. */
function spreadTrace(result, spread, key, colours) {
  const boxes = spread.bands.map((band) => {
    const at = result.bands.findIndex(({column}) => column.id === band.column.id);
    return box(at, band[key][0], band[key].at(-1));
  });
  return {
    type: 'scatter',
    mode: 'lines',
    fill: 'toself',
    fillcolor: translucent(colours.band),
    line: {width: 0},
    x: boxes.flatMap(({x}) => x),
    y: boxes.flatMap(({y}) => y),
    hoverinfo: 'skip',
  };
}

/**
 * `vswr` or `margin_db` over all bands, with the spread behind it if it is known; an SWR likely and at worst, a margin
 * by the cautious figures.
 *
 * @param {{result: LineResult, spread?: SpreadResult, key: 'vswr' | 'margin_db', title: string,
 *   colours?: Colours}} asked
 */
export function bandFigure({result, spread, key, title, colours = PAGE_COLOURS}) {
  const {count, x, names} = bandSlots(result);
  const plain = frame({x: '', y: title, colours, height: 280});
  const here = result.bands.findIndex(({column}) => column.id === result.column.id);
  const margin = key === 'margin_db';
  const curve = (values, line, more = '') => ({
    type: 'scatter',
    mode: 'lines',
    x: gapped(x, count),
    y: gapped(values, count),
    connectgaps: false,
    line: {color: colours.band, ...line},
    customdata: gapped(result.sweep.frequency_hz.map(frequency), count),
    hovertemplate: `%{y:${margin ? '+' : ''}.2f}${margin ? ' dB' : ''}${more} at %{customdata}<extra></extra>`,
  });
  return {
    data: [
      ...(spread ? [spreadTrace(result, spread, key, colours)] : []),
      ...(margin ? [] : [curve(worstSwr(result), {width: 1.5, dash: 'dot'}, ' at worst')]),
      curve(result.sweep[key], {width: 2.5}),
    ],
    layout: {
      ...plain,
      xaxis: {
        ...plain.xaxis,
        tickvals: names.map((_, at) => at + 0.5),
        ticktext: names,
        tickangle: -90,
        range: [0, names.length],
        showgrid: false,
      },
      yaxis: {...plain.yaxis, ...(margin ? {tickformat: '+d'} : swrAxis(result))},
      shapes: [...(margin ? [atTheLimit(colours)] : []), ...(here === -1 ? [] : [chosenBand(here, colours)])],
    },
    config: CONFIG,
  };
}

/** Far off an antenna's bands its SWR would press all others flat. */
const HIGHEST_DRAWN = 10;
/** So that a curve at SWR 1 is not hidden by the axis. */
const BELOW_A_MATCH = 0.9;

/**
 * The highest SWR drawn, above which curves leave the chart; undefined where none does.
 *
 * @param {LineResult} result
 */
export function highestDrawn(result) {
  const worst = worstSwr(result);
  const here = worst.filter((_, at) => result.sweep.band[at] === result.column.id);
  const most = Math.max(HIGHEST_DRAWN, ...here.map((ratio) => 1.2 * (ratio ?? 0)));
  return worst.some((ratio) => ratio === null || ratio > most) ? most : undefined;
}

function swrAxis(result) {
  const highest = highestDrawn(result);
  return highest ? {range: [BELOW_A_MATCH, highest]} : {rangemode: 'normal'};
}

const worstSwr = ({sweep}) => sweep.vswr.map((likely, at) => higherOf(likely, sweep.vswr_high[at]));

const chosenBand = (at, colours) => ({
  type: 'rect',
  layer: 'below',
  xref: 'x',
  yref: 'paper',
  x0: at,
  x1: at + 1,
  y0: 0,
  y1: 1,
  line: {width: 1, color: colours.other, dash: 'dot'},
});

/**
 * Where one element ends and the next begins along the cables [m], each place once.
 *
 * @param {LineResult} result
 */
export function boundaries(result) {
  const end = result.standing_wave.distance_m.at(-1) ?? 0;
  return [...new Set([...result.parts.map(({distance_m}) => distance_m), end])];
}

/** Of the axis, so that on a matched line the current does not lie on the voltage. */
const CURRENT_BELOW = 1.4;

/** From here on a standing wave has too many crests to be drawn one by one. */
const MANY_HALF_WAVES = 10;

/** @param {LineResult} result */
export const isLong = ({standing_wave: {half_waves: count}}) => count > MANY_HALF_WAVES;

/**
 * Peak voltage and current along the line at the frequency looked at; where a place may come to more or less, the most
 * and the least of it, shaded between.
 *
 * @param {LineResult} result
 */
export function waveFigure(result, colours = PAGE_COLOURS) {
  const {distance_m, voltage_v, current_a, voltage_low_v: least, current_low_a: leastCurrent} = result.standing_wave;
  const {unit, shown} = scaleOf('m');
  const x = distance_m.map(shown);
  const plain = frame({x: `from the transmitter, ${unit}`, y: 'peak voltage, V', colours});
  const dashed = {color: colours.ink, width: 2, dash: 'dash'};
  const curve = (y, more, words) => ({
    type: 'scatter',
    mode: 'lines',
    x,
    y,
    hovertemplate: `%{y:.3g} ${words} at %{x:.3g} ${unit}<extra></extra>`,
    ...more,
  });
  return {
    data: [
      ...(least ? [curve(least, {line: {color: colours.band, width: 1.2}}, 'V')] : []),
      curve(
        voltage_v,
        {
          line: {color: colours.band, width: 2.5},
          ...(least && {fill: 'tonexty', fillcolor: translucent(colours.band)}),
        },
        'V',
      ),
      ...(leastCurrent ? [curve(leastCurrent, {line: {...dashed, width: 1}, yaxis: 'y2'}, 'A')] : []),
      curve(current_a, {line: dashed, yaxis: 'y2'}, 'A'),
    ],
    layout: {
      ...plain,
      margin: {...plain.margin, r: 56},
      yaxis: {
        ...plain.yaxis,
        rangemode: 'tozero',
        title: {text: 'peak voltage, V (solid)', font: {color: colours.band}},
      },
      yaxis2: {
        ...plain.yaxis,
        overlaying: 'y',
        side: 'right',
        range: [0, CURRENT_BELOW * Math.max(0, ...current_a) || 1],
        showgrid: false,
        tickmode: 'auto',
        title: {text: 'peak current, A (dashed)', font: {color: colours.ink}},
      },
      shapes: boundaries(result)
        .map(shown)
        .map((at) => ({
          type: 'line',
          yref: 'paper',
          x0: at,
          x1: at,
          y0: 0,
          y1: 1,
          line: {color: colours.soft, width: 1, dash: 'dot'},
        })),
    },
    config: CONFIG,
  };
}
