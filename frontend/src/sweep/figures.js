/** Charts of a sweep as data for the chart library. */
import {CONFIG, PAGE_COLOURS, frame, translucent} from '../shared/charts/figure.js';
import {scaleOf, unitIn} from '../shared/text/measures.js';
import {isAccused, metres} from './reading.js';
/** @import {Profile} from './result.js' */

const megahertz = (frequencies) => frequencies.map((hertz) => hertz / 1e6);
const HEIGHT_PX = 340;

/** A distance, or many, as the axis shows it. */
const along = (distance_m) => scaleOf('m').shown(distance_m);
const axis = () => `from the analyser, ${unitIn('m')}`;

const curve = (x, y, name, line, more = {}) => ({
  type: 'scatter',
  mode: 'lines',
  x,
  y,
  name,
  line,
  connectgaps: false,
  hovertemplate: `%{y:.3f} at %{x:.4g}<extra>${name}</extra>`,
  ...more,
});

const legend = (plain) => ({
  ...plain,
  showlegend: true,
  legend: {orientation: 'h', y: 1.02, yanchor: 'bottom', x: 0},
  margin: {...plain.margin, t: 34},
});

/** Reflection against distance: measured, expected and earlier, with the threshold, and a mark at every joint. */
export function distanceFigure(check, colours = PAGE_COLOURS) {
  const {profile, joints, cables} = check;
  const x = profile.distance_m.map(along);
  const plain = legend(frame({x: axis(), y: 'reflection', colours, height: HEIGHT_PX}));
  return {
    data: [
      ...thresholdBand(profile, profile.expected, colours),
      curve(x, profile.expected, 'expected', {color: colours.soft, width: 1.5, dash: 'dot'}),
      ...earlierCurve(profile, colours),
      curve(x, profile.measured, 'measured', {color: colours.band, width: 2.5}),
    ],
    layout: {
      ...plain,
      yaxis: {...plain.yaxis, range: zoomed(check), tickformat: check.transform === 'low-pass' ? '+.3~f' : '.3~f'},
      shapes: [
        ...cables.filter((cable) => isAccused(cable.element, check)).map((cable) => stretch(cable, colours)),
        ...joints.map((joint) => mark(joint, check, colours)),
      ],
      annotations: joints.map((joint) => label(joint, check, colours)),
    },
    config: CONFIG,
  };
}

/** Echoes against distance where no line is described, each with its distance. */
export function echoFigure({profile, echoes, transform}, colours = PAGE_COLOURS) {
  const x = profile.distance_m.map(along);
  const plain = legend(frame({x: axis(), y: 'reflection', colours, height: HEIGHT_PX}));
  return {
    data: [
      ...thresholdBand(
        profile,
        x.map(() => 0),
        colours,
      ),
      ...earlierCurve(profile, colours),
      curve(x, profile.measured, 'measured', {color: colours.band, width: 2.5}),
    ],
    layout: {
      ...plain,
      yaxis: {...plain.yaxis, tickformat: transform === 'low-pass' ? '+.3~f' : '.3~f'},
      shapes: echoes.map(({distance_m}) => upright(distance_m, {color: colours.soft, width: 1, dash: 'dot'})),
      annotations: echoes.map(({distance_m}) => beside(distance_m, metres(distance_m), colours.ink)),
    },
    config: CONFIG,
  };
}

/**
 * Two sweeps of one line over distance, the former under the latter, and where something was done.
 *
 * @param {{profile: Profile, places: {name: string, distance_m: number}[]}} change
 */
export function changeFigure({profile, places}, colours = PAGE_COLOURS) {
  const x = profile.distance_m.map(along);
  const plain = legend(frame({x: axis(), y: 'reflection', colours, height: HEIGHT_PX}));
  const largest = Math.max(withoutTheEnd(profile), ...places.map((place) => 1.3 * sizeAt(profile, place)));
  return {
    data: [
      curve(x, profile.earlier, 'before', {color: colours.soft, width: 2, dash: 'dash'}),
      curve(x, profile.measured, 'after', {color: colours.band, width: 2.5}),
    ],
    layout: {
      ...plain,
      yaxis: {...plain.yaxis, range: [signed(profile) ? -largest : 0, largest], tickformat: '.3~f'},
      shapes: places.map(({distance_m}) => upright(distance_m, {color: colours.ink, width: 2})),
      annotations: places.map(({name, distance_m}) => beside(distance_m, name, colours.ink)),
    },
    config: CONFIG,
  };
}

/** How many of the largest values of two sweeps are the echo of the line's end, and may run out of the picture. */
const END_SHARE = 0.04;

/** Distances on either side of a place that belong to its peak. */
const PEAK = 6;

/** As high as all but that echo needs, with some room. */
function withoutTheEnd({measured, earlier}) {
  const sizes = [...measured, ...earlier].map((value) => Math.abs(value ?? 0)).toSorted((one, other) => one - other);
  return 1.6 * Math.max(0.01, sizes[Math.floor(sizes.length * (1 - END_SHARE))] ?? 0);
}

/** The larger of two sweeps' echoes around a place, in as many distances as a peak is wide. */
function sizeAt({distance_m, measured, earlier}, {distance_m: wanted}) {
  const first = distance_m.findIndex((at) => at >= wanted);
  if (first < 0) return 0;
  const near = [measured, earlier].flatMap((values) => values.slice(Math.max(first - PEAK, 0), first + PEAK));
  return Math.max(...near.map((value) => Math.abs(value ?? 0)));
}

const signed = ({measured}) => measured.some((value) => value < 0);

/** What a good line may show around what is expected of it. */
function thresholdBand({distance_m, threshold}, expected, colours) {
  const x = distance_m.map(along);
  const edge = (sign) => expected.map((value, at) => (value === null ? null : value + sign * threshold[at]));
  return [
    curve(x, edge(-1), 'below', {width: 0}, {showlegend: false, hoverinfo: 'skip'}),
    curve(
      x,
      edge(1),
      'threshold',
      {width: 0},
      {fill: 'tonexty', fillcolor: translucent(colours.band), hoverinfo: 'skip'},
    ),
  ];
}

const earlierCurve = ({distance_m, earlier}, colours) =>
  earlier.length > 0
    ? [curve(distance_m.map(along), earlier, 'earlier', {color: colours.soft, width: 1.5, dash: 'dash'})]
    : [];

/** The joints' echoes fill the chart; that of the line's end may run out of it. */
function zoomed({profile, joints}) {
  const largest = Math.max(
    0.02,
    ...joints.flatMap((joint, at) =>
      at === joints.length - 1 ? [joint.excess, joint.threshold] : [joint.measured, joint.expected, joint.threshold],
    ),
  );
  return [signed(profile) ? -1.6 * largest : 0, 1.6 * largest];
}

const upright = (distance_m, line) => ({
  type: 'line',
  layer: 'below',
  yref: 'paper',
  x0: along(distance_m),
  x1: along(distance_m),
  y0: 0,
  y1: 1,
  line,
});

const beside = (distance_m, text, color) => ({
  x: along(distance_m),
  yref: 'paper',
  y: 1,
  yanchor: 'top',
  xanchor: 'left',
  showarrow: false,
  textangle: 90,
  text,
  font: {size: 12, color},
});

const stretch = ({from_m, to_m}, colours) => ({
  type: 'rect',
  yref: 'paper',
  x0: along(from_m),
  x1: along(to_m),
  y0: 0,
  y1: 1,
  line: {width: 0},
  fillcolor: colours.ink,
  opacity: 0.12,
});

const mark = (joint, check, colours) =>
  upright(
    joint.distance_m,
    isAccused(joint.element, check) ? {color: colours.ink, width: 2.5} : {color: colours.soft, width: 1, dash: 'dot'},
  );

const label = (joint, check, colours) =>
  beside(
    joint.distance_m,
    `${isAccused(joint.element, check) ? '! ' : ''}${joint.element + 1} · ${joint.name}`,
    isAccused(joint.element, check) ? colours.ink : colours.soft,
  );

/** Return loss at the analyser: the less, the more comes back. */
export function returnLossFigure({curves}, colours = PAGE_COLOURS) {
  const x = megahertz(curves.frequency_hz);
  const positive = (values) => values.map((value) => (value === null ? null : -value));
  const plain = legend(frame({x: 'frequency, MHz', y: 'return loss, dB', colours}));
  return {
    data: [
      curve(x, positive(curves.expected_db), 'expected', {color: colours.soft, width: 1.5, dash: 'dot'}),
      curve(x, positive(curves.measured_db), 'measured', {color: colours.band, width: 1.5}),
      curve(x, positive(curves.fitted_db), 'as fitted', {color: colours.other, width: 1.5, dash: 'dash'}),
    ],
    layout: {...plain, yaxis: {...plain.yaxis, autorange: 'reversed'}},
    config: CONFIG,
  };
}

/** Where a reflection lies on the Smith chart: [resistance, reactance] against the line's impedance. */
export function impedanceOf(real, imaginary) {
  if (real === null || imaginary === null) return [null, null];
  const below = (1 - real) ** 2 + imaginary ** 2;
  return [(1 - real ** 2 - imaginary ** 2) / below, (2 * imaginary) / below];
}

/** The Smith chart of curves of reflections: [{name, real, imaginary, colour, dash}]. */
export function smithFigure(traces, frequencies, colours = PAGE_COLOURS) {
  const texts = megahertz(frequencies).map((value) => `${value.toPrecision(4)} MHz`);
  return {
    data: traces.map(({name, real, imaginary, colour, dash}) => {
      const points = real.map((value, at) => impedanceOf(value, imaginary[at]));
      return {
        type: 'scattersmith',
        mode: 'lines',
        name,
        real: points.map(([one]) => one),
        imag: points.map(([, one]) => one),
        line: {color: colours[colour], width: 1.5, dash},
        text: texts,
        hovertemplate: `%{text}: %{real:.3g} %{imag:+.3g}j<extra>${name}</extra>`,
      };
    }),
    layout: {
      ...legend(frame({x: '', y: '', colours, height: HEIGHT_PX})),
      margin: {l: 24, r: 24, t: 34, b: 20},
      smith: {
        bgcolor: 'rgba(0,0,0,0)',
        realaxis: {
          gridcolor: colours.line,
          linecolor: colours.soft,
          tickfont: {size: 12},
          tickvals: [0.2, 0.5, 1, 2, 5],
        },
        imaginaryaxis: {
          gridcolor: colours.line,
          linecolor: colours.soft,
          tickfont: {size: 12},
          tickvals: [-5, -2, -1, -0.5, -0.2, 0, 0.2, 0.5, 1, 2, 5],
        },
      },
    },
    config: CONFIG,
  };
}

export const lineSmith = ({curves}, colours = PAGE_COLOURS) =>
  smithFigure(
    [
      {
        name: 'measured',
        real: curves.measured_real,
        imaginary: curves.measured_imaginary,
        colour: 'band',
        dash: 'solid',
      },
      {name: 'as fitted', real: curves.fitted_real, imaginary: curves.fitted_imaginary, colour: 'other', dash: 'dash'},
    ],
    curves.frequency_hz,
    colours,
  );

export const partSmith = (part, colours = PAGE_COLOURS) =>
  smithFigure(
    [
      {
        name: 'into port 1',
        real: part.measured_real,
        imaginary: part.measured_imaginary,
        colour: 'band',
        dash: 'solid',
      },
    ],
    part.frequency_hz,
    colours,
  );

/** Loss of a two-port with what is expected and what its parts may lose. */
export function partLossFigure(part, colours = PAGE_COLOURS) {
  const x = megahertz(part.frequency_hz);
  const plain = legend(frame({x: 'frequency, MHz', y: 'loss, dB', colours}));
  return {
    data: [
      curve(x, part.expected_loss_db, 'expected', {color: colours.soft, width: 1.5, dash: 'dot'}),
      curve(x, part.limit_loss_db, 'limit', {color: colours.ink, width: 1.5}),
      ...(part.earlier_loss_db.length > 0
        ? [curve(x, part.earlier_loss_db, 'earlier', {color: colours.soft, width: 1.5, dash: 'dash'})]
        : []),
      curve(x, part.loss_db, 'measured', {color: colours.band, width: 2.5}),
    ],
    layout: plain,
    config: CONFIG,
  };
}

/** Return loss of a two-port into both ports with the least its parts may have. */
export function partReturnFigure(part, colours = PAGE_COLOURS) {
  const x = megahertz(part.frequency_hz);
  const plain = legend(frame({x: 'frequency, MHz', y: 'return loss, dB', colours}));
  return {
    data: [
      curve(x, part.limit_return_loss_db, 'limit', {color: colours.ink, width: 1.5}),
      curve(x, part.return_loss_db, 'port 1', {color: colours.band, width: 2.5}),
      curve(x, part.other_return_loss_db, 'port 2', {color: colours.other, width: 1.5, dash: 'dash'}),
    ],
    layout: {...plain, yaxis: {...plain.yaxis, autorange: 'reversed'}},
    config: CONFIG,
  };
}

/** The kept sweeps of one line over time: {name, dates, values} of every joint, or of a part. */
export function historyFigure({title, series}, colours = PAGE_COLOURS) {
  const plain = legend(frame({x: '', y: title, colours}));
  const hues = [colours.band, colours.other, colours.soft, colours.ink];
  return {
    data: series.map(({name, dates, values}, at) => ({
      type: 'scatter',
      mode: 'lines+markers',
      x: dates,
      y: values,
      name,
      line: {color: hues[at % hues.length], width: 2, dash: at < hues.length ? 'solid' : 'dot'},
      marker: {size: 8, symbol: at},
      hovertemplate: `%{y:.3g} on %{x}<extra>${name}</extra>`,
    })),
    layout: {
      ...plain,
      xaxis: {...plain.xaxis, type: 'date', tickformat: '%Y-%m-%d', nticks: 5},
      yaxis: {...plain.yaxis, rangemode: 'tozero'},
    },
    config: CONFIG,
  };
}
