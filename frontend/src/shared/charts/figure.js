/**
 * Charts as data for the chart library: what all share, a limit's margin against frequency or power, and the return
 * loss against frequency.
 *
 * @import {Cell, Limit} from '../answers.js'
 *
 * @typedef {typeof PAGE_COLOURS} Colours
 * @typedef {{data: object[], layout: object, config: object}} Figure
 */

export const CONFIG = {displayModeBar: false, responsive: true, showTips: false};

/** Colours a chart takes from the page, with those of its light theme. */
export const PAGE_COLOURS = {ink: '#16212b', soft: '#51606d', line: '#d9d6cf', band: '#1f5690', other: '#7a4a00'};

/** The same colour, to lie under others. */
export const translucent = (colour) =>
  colour.replace(/^rgb\((.*)\)$/, 'rgba($1, 0.18)').replace(/^#.*$/, 'rgba(31, 86, 144, 0.18)');

/**
 * The curve of one limit with its range, the cell marked; `along` is frequency or power.
 *
 * @param {{cell: Cell, limit: Limit, along: string, colours?: Colours}} asked
 */
export function limitFigure({cell, limit, along, colours = PAGE_COLOURS}) {
  const {curves} = cell;
  const byFrequency = along === 'frequency';
  const x = byFrequency ? curves.frequency_hz : curves.power_w;
  const low = curves[`margin_by_${along}_db`][limit.id];
  const high = curves[`margin_high_by_${along}_db`][limit.id];
  const at = byFrequency ? cell.frequency_hz : cell.power_w;
  const hover = `%{y:+.1f} dB at %{x:.4s}${byFrequency ? 'Hz' : 'W'}`;
  const marked = at > 0 && limit.margin_db !== null;
  const {yaxis, ...rest} = layout({
    x: byFrequency ? 'frequency, Hz' : 'power, W',
    y: `${limit.name.toLowerCase()}: margin, dB`,
    colours,
  });
  return {
    data: [
      ...bothEnds({x, low, high, hover, colours}),
      ...(marked ? [cellMark(at, limit.margin_db, colours, '%{y:+.1f} dB')] : []),
    ],
    layout: {...rest, yaxis: {...yaxis, tickformat: '+d'}, shapes: [atTheLimit(colours)]},
    config: CONFIG,
  };
}

/**
 * The return loss of the joint alone with its range, the cell marked, the one asked for as a line across.
 *
 * @param {{cell: Cell, colours?: Colours}} asked
 */
export function returnLossFigure({cell, colours = PAGE_COLOURS}) {
  const {curves, frequency_hz: at, match} = cell;
  const hover = '%{y:.1f} dB at %{x:.4s}Hz';
  return {
    data: [
      ...bothEnds({
        x: curves.frequency_hz,
        low: curves.return_loss_by_frequency_db,
        high: curves.return_loss_high_by_frequency_db,
        hover,
        colours,
      }),
      cellMark(at, match.return_loss_db, colours, '%{y:.1f} dB'),
    ],
    layout: {
      ...layout({x: 'frequency, Hz', y: 'return loss, dB', colours}),
      shapes: [across(match.asked_db, colours)],
    },
    config: CONFIG,
  };
}

/**
 * What it shows, in words.
 *
 * @param {Cell} cell
 */
export const returnLossLabel = (cell) =>
  `Return loss of ${cell.family.name} alone against frequency; the cell is marked, ` +
  `the ${cell.match.asked_db} dB asked for is a line across`;

/** The cautious curve and the generous one, the range between them filled. */
function bothEnds({x, low, high, hover, colours}) {
  const line = (y, name, more) => ({
    x,
    y,
    name,
    type: 'scatter',
    mode: 'lines',
    line: {color: colours.band, width: 2},
    hovertemplate: `${hover}<extra>${name}</extra>`,
    ...more,
  });
  return [
    line(high, 'generous', {line: {color: colours.band, width: 1, dash: 'dot'}}),
    line(low, 'cautious', {fill: 'tonexty', fillcolor: translucent(colours.band)}),
  ];
}

/**
 * What the chart shows, in words.
 *
 * @param {{cell: Cell, limit: Limit, along: string}} asked
 */
export function limitLabel({cell, limit, along}) {
  const held = along === 'frequency' ? 'at the cell’s power' : 'at the cell’s frequency';
  return `${limit.name}: margin of ${cell.family.name} against ${along}, ${held}; the cell is marked`;
}

const cellMark = (x, y, colours, hover) => ({
  x: [x],
  y: [y],
  name: 'this cell',
  type: 'scatter',
  mode: 'markers',
  cliponaxis: false,
  marker: {color: colours.other, size: 11, symbol: 'diamond'},
  hovertemplate: `${hover}<extra>this cell</extra>`,
});

const HEIGHT_PX = 260;

/**
 * A plain layout with two titled axes.
 *
 * @param {{x: string, y: string, colours: Colours, height?: number}} asked
 */
export function frame({x, y, colours, height = HEIGHT_PX}) {
  const axis = (title) => ({
    title: {text: title, standoff: 8},
    gridcolor: colours.line,
    linecolor: colours.soft,
    zeroline: false,
    fixedrange: true,
    automargin: true,
  });
  return {
    height,
    margin: {l: 52, r: 12, t: 10, b: 44},
    font: {color: colours.ink, size: 12, family: 'system-ui, sans-serif'},
    paper_bgcolor: 'rgba(0,0,0,0)',
    plot_bgcolor: 'rgba(0,0,0,0)',
    xaxis: axis(x),
    yaxis: axis(y),
    showlegend: false,
    dragmode: false,
    hovermode: 'closest',
  };
}

/** A line across the chart. */
const across = (y, colours) => ({
  type: 'line',
  xref: 'paper',
  x0: 0,
  x1: 1,
  y0: y,
  y1: y,
  line: {color: colours.ink, width: 1.5},
});

/** The line across at 0 dB. */
export const atTheLimit = (colours) => across(0, colours);

function layout({x, y, colours}) {
  const plain = frame({x, y, colours});
  return {
    ...plain,
    xaxis: {...plain.xaxis, type: 'log', exponentformat: 'SI', dtick: 1},
  };
}
