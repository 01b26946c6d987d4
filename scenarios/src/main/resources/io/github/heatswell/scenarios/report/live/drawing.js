import { isNarrow, label, line, path, scaleOf, shape } from './shapes.js';
import { changesFor, checkValve, numbersOf, written } from './controls.js';

/*
 * An elevation with a ruler of heights above the drain cock; what is too low or too high for it hangs on a broken pipe with its height,
 * and words below the drawing name it. Beside it stands what moves: layers hatched by temperature, a diaphragm, a needle, drops and a jug. Symbols for valves are those of ISO 14617; the gauge has a plain face by EN 837.
 */

const COLD = 400; // where the cold feed lies, at the height of the drain cock (px)
const FLOOR = 478;
const TOP = 92;
/** Where things stand from left to right (px), on a wide screen and on a phone. */
const WIDE = { width: 780, ruler: 24, mains: 76, feed: 156, relief: 228, gauge: 346, vessel: 448, tank: 560, shell: 92, rod: 34, tap: 742 };
const NARROW = { width: 640, ruler: 8, mains: 58, feed: 126, relief: 174, gauge: 284, vessel: 382, tank: 464, shell: 78, rod: 30, tap: 614 };

/** The height of a tank (m): one of usual proportions is three times as high as wide; one of others is drawn at most half or twice as high. */
function heightOf(tank) {
  const usual = Math.cbrt((36 * tank.volume) / Math.PI);
  return Math.min(2 * usual, Math.max(usual / 2, tank.height ?? usual));
}

function elevationOf(described) {
  const heights = [heightOf(described.tank), described.gaugeHeight + 0.4, ...described.relief.map((one) => one.height + 0.4), ...described.vessels.map((one) => one.height + 0.8)];
  const most = Math.min(Math.max(1, ...heights), 1.7 * heightOf(described.tank));
  const metre = (COLD - TOP) / most;
  return { most, metre, y: (height) => COLD - height * metre };
}

/** A vessel's height grows with the root of its volume, so that twice the water looks like twice the vessel (px). */
const vesselHeight = (volume) => Math.min(250, 42 + 620 * Math.cbrt(volume / 4));
const vesselVolume = (height) => 4 * Math.max(0, (height - 42) / 620) ** 3;

/** Lines closer together the hotter the water is: 10 degC has them 22 px apart, 90 degC 4 px. */
function hatch(x, y, width, height, kelvin, kind) {
  const apart = Math.max(4, 22 - (18 * (kelvin - 283)) / 80);
  const group = shape('g', { class: kind });
  for (let at = y + height - apart / 2; at > y; at -= apart) {
    group.append(shape('line', { x1: x, x2: x + width, y1: at, y2: at }));
  }
  return group;
}

function ruler({ most, y }, us, x) {
  const group = shape('g', { 'aria-hidden': 'true' });
  const step = most > 4 ? 1 : most > 1.6 ? 0.5 : 0.25;
  const foot = 0.3048;
  const marks = us ? { unit: 'ft', length: foot * (most > 3 ? 2 : 1) } : { unit: 'm', length: step };
  group.append(line(x, y(0), x, y(most), 'thin'));
  for (let i = 0; i * marks.length <= most + 1e-9; i += 1) {
    const height = i * marks.length;
    group.append(line(x - 5, y(height), x, y(height), 'thin'));
    if (i > 0) {
      const topmost = (i + 1) * marks.length > most + 1e-9;
      group.append(label(x + 5, y(height) + 4, `${Number((us ? height / foot : height).toFixed(2))}${topmost ? ` ${marks.unit}` : ''}`, { class: 'small' }));
    }
  }
  return group;
}

/** A handle that is dragged, stepped by keys, or set by typing in the form: one number of the form. */
function grip(number, x, y, words) {
  const arrows = path(`M${x - 5} ${y - 2} l5 -5 l5 5 M${x - 5} ${y + 2} l5 5 l5 -5`, 'arrows');
  return shape('g', {}, shape('rect', {
    x: x - 17, y: y - 9, width: 34, height: 18, rx: 3, class: 'grip', tabindex: 0, role: 'slider', 'data-field': number.field, 'aria-orientation': 'vertical',
    'aria-label': words, 'aria-valuemin': String(number.least), 'aria-valuemax': String(number.most), 'aria-valuenow': String(number.value), 'aria-valuetext': number.said,
  }), arrows);
}

/** A straight scale with a handle, along which a number goes from its least to its most. */
function rod(number, x, bottom, top, words) {
  const y = (shown) => bottom + ((top - bottom) * (shown - number.least)) / (number.most - number.least);
  const group = shape('g', {}, line(x, bottom, x, top, 'thin'));
  for (let i = 0; i <= 4; i += 1) {
    const at = bottom + ((top - bottom) * i) / 4;
    group.append(line(x - 5, at, x + 5, at, 'thin'));
  }
  group.append(grip(number, x, y(number.value), words));
  return { group, of: (at) => number.least + ((at - bottom) / (top - bottom)) * (number.most - number.least) };
}

function spring(x, bottom, top, width) {
  const turns = 5;
  let d = `M${x} ${bottom}`;
  for (let i = 1; i <= turns; i += 1) {
    d += ` L${x + (i % 2 ? width : -width)} ${bottom + ((top - bottom) * (i - 0.5)) / turns}`;
  }
  return path(`${d} L${x} ${top}`, 'thin');
}

const aboveOrBelow = (live, height) => `${live.said('LENGTH', Math.abs(height))} ${height > 0 ? 'above' : 'below'}`;
const called = (one) => (one.name ? ` “${one.name}”` : '');
const vesselWords = (live, one) => `${live.house.spelled('the expansion vessel')}${called(one)}`;
const valveWords = (live, one) => `${live.house.spelled('the relief valve')}${called(one)}`;

/**
 * What the drawing leaves out or does not show where it is, in sentences.
 *
 * @param {import('./house.js').Live} live
 */
function notesOf(live, moved, drawnValves) {
  const { relief, vessels } = live.described;
  const place = (one) => (one.inTank ? 'in the tank' : one.height === 0 ? '' : `${aboveOrBelow(live, one.height)} the drain cock`);
  const missing = [
    ...vessels.slice(1).map((one) => `${vesselWords(live, one)} (${[live.said('VOLUME', one.volume), place(one)].filter(Boolean).join(', ')})`),
    ...relief.filter((one) => !drawnValves.includes(one)).map((one) => `${valveWords(live, one)} (${live.said('GAUGE_PRESSURE', one.opens)})`),
  ];
  return [
    missing.length > 0 && `Not drawn, but simulated: ${missing.join('; ')}.`,
    moved.length > 0 && `Not at its height in the drawing, on a broken pipe: ${moved.join('; ')}.`,
    vessels[0]?.inTank && `Drawn beside the tank, but built into it: ${vesselWords(live, vessels[0])}.`,
    live.run.relief.filter((one) => one.discharged > 0).length > 1 && live.house.spelled('Each jug shows what all relief valves discharge together.'),
    'In the tank, the closer the stripes the hotter the water.',
  ].filter(Boolean);
}

/**
 * Sets up the drawing; returns what draws a house as it was described, and what moves it to a moment.
 *
 * @param {import('./house.js').Live} live
 */
export function drawingOf(svg, notes, live, tap) {
  let parts = {};
  /** @type {{field: string, off: number, toDrawing: DOMMatrix} | null} */
  let dragged = null;
  let X = WIDE;

  /** Where a thing stands between the highest and lowest place it can be drawn at; at 0, which is what a file leaves out, at the usual one. */
  function placed(elevation, { words, height }, usual, highest, lowest) {
    if (height === 0) {
      return { y: usual, broken: '' };
    }
    const y = Math.min(lowest, Math.max(highest, elevation.y(height)));
    const broken = Math.abs(y - elevation.y(height)) < 1 ? '' : aboveOrBelow(live, height);
    if (broken) {
      parts.moved.push(`${words} (${broken} the drain cock)`);
    }
    return { y, broken };
  }

  /** Two strokes across a pipe that is not drawn at its length, and where its end is. */
  function breakOf(x, broken, below = 46) {
    const y = COLD - 12;
    return broken ? shape('g', {}, shape('rect', { x: x - 4, y: y - 4, width: 8, height: 8, class: 'gap' }), line(x - 8, y + 1, x + 8, y - 7, 'thin'), line(x - 8, y + 7, x + 8, y - 1, 'thin'),
      label(x, COLD + below, broken, { class: 'small', 'text-anchor': 'middle' })) : '';
  }

  function feed(described, numbers) {
    const group = shape('g');
    const arrangement = described.supply.arrangement;
    group.append(line(X.mains - 24, COLD, X.tank, COLD, 'pipe'), path(`M${X.mains - 26} ${COLD - 7} l12 7 l-12 7 z`, 'part'));
    const mains = numbers.find((one) => one.field === 'supply.pressure');
    group.append(label(X.mains - 34, COLD + 26, live.house.spelled('mains'), { class: 'small' }));
    parts.mains = label(X.mains - 34, COLD + 46, '', { class: mains ? 'griptext' : 'value' });
    group.append(parts.mains);
    if (mains) {
      parts.rods['supply.pressure'] = rod(mains, X.mains + 14, COLD - 28, COLD - 168, live.house.spelled('Mains pressure'));
      group.append(parts.rods['supply.pressure'].group, label(X.mains - 4, COLD - 174, 'supply', { class: 'small' }));
    }
    const set = numbers.find((one) => one.field === 'supply.reducing-valve.set');
    const around = [X.feed - 24, COLD - 24, 48, 40];
    if (arrangement === 'direct') {
      group.append(chooser('supply.arrangement', 'check-valve', 'Fit a check valve', around, [shape('rect', { x: X.feed - 16, y: COLD - 13, width: 32, height: 26, class: 'ghost' })]));
      group.append(label(X.feed, X === NARROW ? COLD - 22 : COLD + 30, 'open feed', { class: 'small', 'text-anchor': 'middle' }));
      return group;
    }
    parts.flap = line(X.feed + 16, COLD - 13, X.feed + 16, COLD + 13, 'closed');
    if (set) {
      const bypassed = described.supply.bypass !== undefined;
      group.append(chooser('supply.reducing-valve.bypass-opens', bypassed ? 'none' : 'open', bypassed ? 'Close the bypass of the reducing valve' : 'Open the bypass of the reducing valve',
        [X.feed - 34, COLD + 2, 68, 30], [path(`M${X.feed - 30} ${COLD} v16 h60 v-16`, bypassed ? 'thin' : 'ghost')]));
      group.append(path(`M${X.feed - 18} ${COLD - 12} v24 l36 -24 v24 z`, 'part'), spring(X.feed, COLD, COLD - 46, 8), line(X.feed, COLD - 46, X.feed, COLD - 150, 'thin'));
      parts.rods['supply.reducing-valve.set'] = rod(set, X.feed, COLD - 58, COLD - 150, 'Adjusting screw of the reducing valve');
      group.append(parts.rods['supply.reducing-valve.set'].group, label(X.feed, COLD - 166, set.said, { 'text-anchor': 'middle', class: 'griptext' }));
      group.append(named('reducing valve', 32), parts.flap);
    } else {
      group.append(chooser('supply.arrangement', 'direct', 'Take the check valve out', around,
        [shape('rect', { x: X.feed - 16, y: COLD - 13, width: 32, height: 26, class: 'part' }), line(X.feed - 16, COLD + 13, X.feed + 16, COLD - 13, 'thin'), parts.flap]));
      group.append(named(checkValve(live), 30));
    }
    parts.pushes = path(`M${X.feed + 62} ${COLD} h-40 m10 -8 l-10 8 l10 8`, 'pushes');
    group.append(parts.pushes);
    return group;
  }

  /** Words that say whether the valve in the cold feed is shut. */
  function named(valve, below) {
    const words = X === NARROW ? label(X.feed - 14, COLD + below, '', { class: 'small' }) : label(X.feed - 44, COLD + below, '', { class: 'small' });
    parts.feedWords = (shut) => {
      words.textContent = `${valve}, ${shut ? 'shut' : 'open'}`;
    };
    return words;
  }

  /** A relief valve as an angle valve with its spring; its water runs down into a jug. */
  function relief(valve, x, from, { y: at, broken }, jugBottom) {
    const group = shape('g');
    const out = valve.onTank ? -1 : 1;
    group.append(line(x, from, x, at + 14, 'pipe'), breakOf(x, broken), path(`M${x - 11} ${at + 16} h22 l-11 -16 z`, 'part'), path(`M${x} ${at} l${16 * out} -11 v22 z`, 'part'), line(x - 9, at - 34, x + 9, at - 34, 'thin'));
    const lifted = shape('g', {}, spring(x, at, at - 34, 7), line(x - 9, at, x + 9, at, 'closed'));
    group.append(lifted);
    const spout = x + 30 * out;
    group.append(path(`M${x + 16 * out} ${at} H${spout} V${at + 20}`, 'pipe'));
    const jug = { x: spout - 20, top: jugBottom - 62, bottom: jugBottom };
    group.append(path(`M${jug.x} ${jug.top} V${jug.bottom} H${jug.x + 40} V${jug.top}`, 'part'), path(`M${jug.x + 40} ${jug.top + 14} q14 0 14 14 t-14 14`, 'thin'));
    parts.jugs.push({ ...jug, level: shape('rect', { x: jug.x + 2, width: 36, y: jug.bottom - 1, height: 0, class: 'water' }) });
    const drops = [0, 1, 2].map(() => shape('ellipse', { cx: spout, cy: at + 28, rx: 3, ry: 5, class: 'drop', visibility: 'hidden' }));
    parts.drops.push({ drops, from: at + 26, to: jug.bottom - 8 });
    group.append(parts.jugs.at(-1).level, ...drops);
    const volume = valve.onTank ? label(jug.x - 8, jug.bottom - 8, '', { class: 'value halo', 'text-anchor': 'end' }) : label(jug.x + 20, jug.top - 8, '', { class: 'value halo', 'text-anchor': 'middle' });
    parts.volumes.push(volume);
    parts.flows.push(flowOf(valve));
    group.append(volume);
    const name = (valve.name.length <= 16 ? valve.name : live.house.spelled('relief valve')) + (valve.condition === 'sound' ? '' : `, ${valve.condition.replaceAll('-', ' ')}`);
    const words = { class: 'small', 'text-anchor': valve.onTank ? 'start' : 'middle' };
    const left = x - (valve.onTank ? 20 : 0);
    const pressure = label(left, at - 40, '', words);
    group.append(label(left, at - 56, name, words), pressure);
    parts.lifts.push((opened) => {
      lifted.setAttribute('transform', opened ? `translate(0 ${at - 34}) scale(1 0.65) translate(0 ${34 - at})` : '');
      pressure.textContent = opened && valve.condition === 'sound' ? `open, shuts below ${live.said('GAUGE_PRESSURE', valve.reseats)}` : live.said('GAUGE_PRESSURE', valve.opens);
    });
    return group;
  }

  /** Whether a valve lets water out at a moment, and how much it has by then: the trace knows the sum of all, the events which one is open. */
  function flowOf(valve) {
    const { relief, events } = live.run;
    const others = relief.filter((one) => one.name !== valve.name && one.discharged > 0);
    const moves = events.filter((one) => one.device === valve.name && ['RELIEF_OPENED', 'RELIEF_RESEATED'].includes(one.kind));
    const opened = (time) => moves.filter((one) => one.time <= time).at(-1)?.kind === 'RELIEF_OPENED';
    const own = relief.some((one) => one.name === valve.name && one.discharged > 0);
    return {
      drips: (moment) => own && moment.RELIEF_FLOW > 0 && (others.length === 0 || valve.condition !== 'sound' || opened(moment.time)),
      total: (moment) => (own ? moment.RELIEVED_TOTAL : 0),
      shared: own && others.length > 0,
    };
  }

  /** Of several valves at the same pipe there is room for one: the first that discharges anything, or else the first. */
  const drawn = (valves) => valves.find((valve) => live.run.relief.some((one) => one.name === valve.name && one.discharged > 0)) ?? valves[0];

  function gauge(described, elevation) {
    const { y, broken } = placed(elevation, { words: 'the gauge', height: described.gaugeHeight }, COLD - 96, 78, COLD - 62);
    const scale = scaleOf(live.house, 'GAUGE_PRESSURE');
    const most = described.us ? 200 : scale.unit === 'kPa' ? 1600 : 16;
    const angle = (shown) => ((225 - (270 * Math.min(most * 1.03, Math.max(0, shown))) / most) * Math.PI) / 180;
    const point = (shown, radius) => [X.gauge + radius * Math.cos(angle(shown)), y - radius * Math.sin(angle(shown))];
    const group = shape('g', {}, line(X.gauge, COLD, X.gauge, y + 44, 'pipe'), breakOf(X.gauge, broken), shape('circle', { cx: X.gauge, cy: y, r: 45, class: 'part' }));
    const figures = [];
    for (let i = 0; i <= 8; i += 1) {
      const shown = (most * i) / 8;
      group.append(line(...point(shown, 38), ...point(shown, 44), 'thin'));
      if (i % 2 === 0) {
        const [x, at] = point(shown, 28);
        figures.push(label(x, at + 4, String(shown), { class: 'small halo', 'text-anchor': 'middle' }));
      }
    }
    for (const limit of live.run.limits) {
      group.append(line(...point(scale.shown(limit.pressure), 36), ...point(scale.shown(limit.pressure), 45), 'tick'));
    }
    parts.needle = line(X.gauge, y, X.gauge, y - 34, 'needle');
    parts.needleAt = (gaugePressure) => {
      const [x2, y2] = point(scale.shown(gaugePressure), 34);
      parts.needle.setAttribute('x2', x2.toFixed(2));
      parts.needle.setAttribute('y2', y2.toFixed(2));
    };
    parts.reading = label(X.gauge, y - 54, '', { class: 'value', 'text-anchor': 'middle' });
    group.append(parts.needle, shape('circle', { cx: X.gauge, cy: y, r: 4 }), ...figures, parts.reading);
    return group;
  }

  function vessel(described, elevation, numbers) {
    const group = shape('g');
    const one = described.vessels[0];
    if (!one) {
      group.append(line(X.vessel, COLD, X.vessel, COLD - 16, 'pipe'), line(X.vessel - 8, COLD - 16, X.vessel + 8, COLD - 16, 'pipe'));
      group.append(label(X.vessel, COLD - 26, live.house.spelled('no vessel'), { class: 'small', 'text-anchor': 'middle' }));
      parts.vesselAt = () => {};
      return group;
    }
    const height = vesselHeight(one.volume);
    const { y: foot, broken } = placed(elevation, { words: vesselWords(live, one), height: one.height }, COLD, Math.max(height, 194) + 76, COLD);
    const bottom = foot - 34;
    const top = bottom - height;
    const half = Math.min(48, 16 + height / 4.4);
    const box = { x: X.vessel - half, width: 2 * half };
    group.append(line(X.vessel, COLD, X.vessel, bottom, 'pipe'), breakOf(X.vessel, broken, 26));
    const shut = one.condition === 'isolated';
    if (shut || (one.condition === 'sound' && !one.inTank)) {
      group.append(chooser('vessel', shut ? 'sound' : 'isolated', `${shut ? 'Open' : 'Shut'} the isolating valve of the expansion vessel`, [X.vessel - 24, bottom, 48, 34],
        [path(`M${X.vessel - 9} ${bottom + 7} h18 l-18 18 h18 z`, 'part'), ...(shut ? [line(X.vessel - 14, bottom + 16, X.vessel + 14, bottom + 16, 'closed')] : [])]));
    }
    const clip = shape('clipPath', { id: 'shell' }, shape('rect', { ...box, y: top, height, rx: half * 0.7 }));
    parts.vesselWater = path('', 'water');
    parts.diaphragm = path('', 'pipe');
    parts.gas = shape('g', { class: 'gas' });
    group.append(clip, shape('rect', { ...box, y: top, height, rx: half * 0.7, class: 'part' }), shape('g', { 'clip-path': 'url(#shell)' }, parts.gas, parts.vesselWater, parts.diaphragm));
    parts.vesselAt = (moment) => {
      const held = one.condition === 'waterlogged' ? 0.96 : Math.min(1, moment.VESSEL_WATER / one.volume);
      const y = bottom - held * height;
      const sag = Math.min(14, height * 0.12) * (1 - 2 * held);
      parts.vesselWater.setAttribute('d', `M${box.x} ${bottom} V${y} Q${X.vessel} ${y + sag * 2} ${box.x + box.width} ${y} V${bottom} z`);
      parts.diaphragm.setAttribute('d', `M${box.x} ${y} Q${X.vessel} ${y + sag * 2} ${box.x + box.width} ${y}`);
      dots(parts.gas, box, top, y, moment.gas);
      parts.held.textContent = live.said('VOLUME', moment.VESSEL_WATER);
    };
    parts.held = label(X.vessel, bottom - 8, '', { class: 'small halo', 'text-anchor': 'middle' });
    group.append(parts.held);
    const volume = numbers.find((number) => number.field === 'vessel.volume');
    const scale = volume.scale;
    parts.rods['vessel.volume'] = { of: (at) => scale.shown(vesselVolume(bottom - at)) };
    group.append(grip(volume, X.vessel, top, live.house.spelled('Vessel size')), label(X.vessel, top - 16, `size ${volume.said}`, { 'text-anchor': 'middle', class: 'griptext' }));
    const precharge = numbers.find((number) => number.field === 'vessel.precharge');
    const pump = Math.min(X.vessel + half + 22, X.tank - 20);
    group.append(path(`M${X.vessel + half} ${bottom - height / 2} H${pump}`, 'thin'), shape('rect', { x: pump - 7, y: bottom - 96, width: 14, height: 96, class: 'part' }));
    const words = Math.min(pump + 38, X.tank - 8);
    const over = Math.abs(top - 6 - (bottom - 194)) < 40 ? top - 42 : bottom - 194; // clear of the size above the vessel
    parts.rods['vessel.precharge'] = rod(precharge, pump, bottom - 100, bottom - 176, live.house.spelled('Precharge, by the pump'));
    group.append(parts.rods['vessel.precharge'].group, label(words, over - 20, 'precharge', { 'text-anchor': 'end', class: 'small' }), label(words, over, precharge.said, { 'text-anchor': 'end', class: 'griptext' }));
    return group;
  }

  /** Gas as dots: as many as there is gas, so that they stand closer the more it is pressed together. */
  function dots(group, box, top, y, amount) {
    const count = Math.round(Math.min(160, amount));
    const area = Math.max(1, box.width * (y - top));
    const apart = Math.max(3, Math.sqrt(area / Math.max(1, count)));
    const all = [];
    for (let row = 0, at = top + apart / 2; at < y; row += 1, at += apart) {
      for (let x = box.x + (row % 2 ? apart : apart / 2); x < box.x + box.width; x += apart) {
        all.push(shape('circle', { cx: x, cy: at, r: 1.6 }));
      }
    }
    group.replaceChildren(...all);
  }

  function tank(described, elevation, numbers) {
    const group = shape('g');
    const height = heightOf(described.tank) * elevation.metre;
    const bottom = COLD + 14;
    const box = { x: X.tank, y: bottom - height, width: X.shell, height };
    const right = box.x + box.width;
    group.append(path(`M${X.tank + X.shell / 2} ${box.y} V${box.y - 22} H${X.tap} V${box.y + 34}`, 'pipe'));
    group.append(shape('rect', { ...box, rx: 12, class: 'part' }));
    const clip = shape('clipPath', { id: 'tank' }, shape('rect', { ...box, rx: 12 }));
    parts.layers = shape('g', { 'clip-path': 'url(#tank)' });
    parts.tankTexts = shape('g');
    group.append(clip, parts.layers, parts.tankTexts);
    group.append(line(right - 10, FLOOR, right - 10, bottom, 'thin'), line(box.x + 10, FLOOR, box.x + 10, bottom, 'thin'));
    const middle = box.x + box.width / 2;
    parts.heater = described.heater.gas
      ? shape('g', {}, ...[-22, 0, 22].map((dx) => path(`M${middle + dx} ${bottom + 38} q-11 -12 0 -30 q11 18 0 30 z`, 'heat')))
      : path(`M${right} ${bottom - 26} h-64 m0 0 v-12 h64`, 'heat');
    parts.heaterWords = label(middle, FLOOR + 18, '', { class: 'small', 'text-anchor': 'middle' });
    group.append(parts.heater, parts.heaterWords);
    const set = numbers.find((one) => one.field === 'heater.set-point');
    const foot = Math.max(bottom - 24, COLD - 60);
    parts.rods['heater.set-point'] = rod(set, right + X.rod, foot, foot - 150, 'Thermostat');
    const words = X === NARROW ? [right + 4, 'start'] : [right + X.rod, 'middle'];
    group.append(parts.rods['heater.set-point'].group, label(words[0], foot + 26, set.said, { 'text-anchor': words[1], class: 'griptext' }), label(words[0], foot + 46, 'thermostat', { 'text-anchor': words[1], class: 'small' }));
    parts.tankAt = (moment) => layers(box, moment);
    parts.stream = line(X.tap, box.y + 46, X.tap, box.y + 84, 'pipe');
    const valve = [path(`M${X.tap - 12} ${box.y + 34} h24 l-24 14 h24 z`, 'part'), line(X.tap, box.y + 40, X.tap + 20, box.y + 40, 'pipe')];
    const handle = tap.isOffered()
      ? switchOf('draws', tap.isOpened() ? 'Leave the tap shut' : 'Open a tap at this time', [X.tap - 22, box.y + 16, 46, 46], valve, tap.toggle) : shape('g', {}, ...valve);
    group.append(parts.stream, path(`M${X.tap - 16} ${box.y + 80} q0 12 16 12 t16 -12`, 'thin'), handle, label(X.tap, box.y + 110, live.house.spelled('tap'), { class: 'small', 'text-anchor': 'middle' }));
    return group;
  }

  /** Something in the drawing that is opened or shut as a button: it stands over its reach, `at` x and y, so wide and so high. */
  function switchOf(field, words, at, shapes, toggle) {
    const [x, y, width, height] = at;
    const reach = shape('rect', { x, y, width, height, fill: 'transparent', stroke: 'none' });
    const button = shape('g', { class: 'switch', tabindex: 0, role: 'button', 'data-field': field, 'aria-label': live.house.spelled(words) }, ...shapes, reach);
    button.addEventListener('click', toggle);
    button.addEventListener('keydown', (event) => {
      if (event.key === 'Enter' || event.key === ' ') {
        event.preventDefault();
        toggle();
      }
    });
    return button;
  }

  /** A switch that makes a choice of the form. */
  const chooser = (field, value, words, at, shapes) => switchOf(field, words, at, shapes, () => live.change(changesFor(live, field, value)));

  /** Two layers that hold the heat of all: as hot as the top and as cold as the bottom, and their mean is that of the tank. */
  function layers(box, moment) {
    const { WATER_TOP: top, WATER_BOTTOM: low, WATER_MEAN: mean } = moment;
    const mixed = top - low < 1;
    const hot = mixed ? 1 : Math.min(1, Math.max(0, (mean - low) / (top - low)));
    const border = box.y + hot * box.height;
    const all = [shape('rect', { ...box, class: 'water' }), hatch(box.x, box.y, box.width, border - box.y, mixed ? mean : top, 'hot')];
    const texts = [];
    const write = (y, kelvin) => {
      const text = live.said('TEMPERATURE', kelvin);
      const width = Math.min(box.width, text.length * 9.5 + 8);
      texts.push(shape('rect', { x: box.x + box.width / 2 - width / 2, y: y - 16, width, height: 22, class: 'part', stroke: 'none' }), label(box.x + box.width / 2, y, text, { class: 'value fitted', 'text-anchor': 'middle' }));
    };
    if (mixed) {
      write(box.y + box.height / 2, mean);
    } else {
      all.push(hatch(box.x, border, box.width, box.y + box.height - border, low, 'hot'), line(box.x, border, box.x + box.width, border, 'thin'));
      write(Math.max(box.y + 24, Math.min(border - 6, box.y + hot * box.height * 0.5 + 6)), top);
      write(Math.min(box.y + box.height - 12, Math.max(border + 22, border + (box.height * (1 - hot)) / 2)), low);
    }
    parts.layers.replaceChildren(...all);
    parts.tankTexts.replaceChildren(...texts);
  }

  /** How much the jugs hold: the next round size above what is discharged in all. */
  function jugSize() {
    const litres = Math.max(1, live.run.discharged * 1e3);
    const ten = 10 ** Math.floor(Math.log10(litres));
    return ([1, 2, 5].find((size) => size * ten >= litres) ?? 10) * ten / 1e3;
  }

  function draw() {
    const { described } = live;
    X = isNarrow() ? NARROW : WIDE;
    const numbers = numbersOf(live);
    const focused = svg.contains(document.activeElement) ? document.activeElement.getAttribute('data-field') : null;
    const elevation = elevationOf(described);
    parts = { rods: {}, jugs: [], drops: [], volumes: [], flows: [], lifts: [], moved: [], numbers };
    const branch = drawn(described.relief.filter((one) => !one.onTank));
    const onTank = drawn(described.relief.filter((one) => one.onTank));
    const high = onTank || [described.gaugeHeight, branch?.height ?? 0, described.vessels[0]?.height ?? 0].some((height) => height > 0) ? 0 : 56;
    svg.setAttribute('viewBox', `0 ${high} ${X.width} ${500 - high}`);
    const tankTop = COLD + 14 - heightOf(described.tank) * elevation.metre;
    const reliefs = [];
    if (branch) {
      reliefs.push(relief(branch, X.relief, COLD, placed(elevation, { words: valveWords(live, branch), height: branch.height }, COLD - 152, 74, COLD - 130), COLD - 14));
    }
    if (onTank) {
      reliefs.push(relief(onTank, X.tank + 20, tankTop, { y: tankTop - 34, broken: '' }, FLOOR));
    }
    svg.replaceChildren(
      line(0, FLOOR, X.width, FLOOR, 'thin'), ruler(elevation, described.us, X.ruler), tank(described, elevation, numbers), feed(described, numbers),
      gauge(described, elevation), vessel(described, elevation, numbers), ...reliefs,
    );
    parts.jug = jugSize();
    notes.textContent = notesOf(live, parts.moved, [branch, onTank]).join(' ');
    if (focused) {
      svg.querySelector(`[data-field="${focused}"]`)?.focus();
    }
  }

  function move(moment, still) {
    const { described, run } = live;
    const air = run.trace.atmosphere;
    const one = described.vessels[0];
    moment.gas = one ? ((one.precharge + air) * one.volume) / 12 : 0;
    parts.tankAt(moment);
    parts.vesselAt(moment);
    parts.needleAt(moment.GAUGE_READING);
    parts.reading.textContent = live.said('GAUGE_PRESSURE', moment.GAUGE_READING);
    parts.mains.textContent = live.said('GAUGE_PRESSURE', moment.MAINS_ABSOLUTE - air);
    const feeding = moment.regime === 'fed' || moment.regime === 'filling' || moment.regime === 'returned';
    const heats = moment.HEATER_POWER > 0;
    if (parts.flap) {
      parts.flap.setAttribute('transform', feeding ? `rotate(-62 ${X.feed + 16} ${COLD - 13})` : '');
      parts.feedWords(!feeding);
      parts.pushes.setAttribute('visibility', heats && !feeding ? 'visible' : 'hidden');
    }
    parts.heater.setAttribute('visibility', heats ? 'visible' : described.heater.gas ? 'hidden' : 'visible');
    parts.heater.setAttribute('stroke-opacity', heats ? '1' : '0.25');
    parts.heaterWords.textContent = described.heater.gas ? (heats ? 'burner on' : 'burner off') : heats ? 'element on' : 'element off';
    parts.stream.setAttribute('visibility', moment.DRAW_FLOW > 0 ? 'visible' : 'hidden');
    for (const [i, jug] of parts.jugs.entries()) {
      const { total, shared } = parts.flows[i];
      const height = (jug.bottom - jug.top - 6) * Math.min(1, total(moment) / parts.jug);
      jug.level.setAttribute('y', String(jug.bottom - 1 - height));
      jug.level.setAttribute('height', String(height));
      parts.volumes[i].textContent = `${live.said('VOLUME', total(moment))}${X === WIDE && shared ? ' in all' : ''}`;
    }
    for (const [i, { drops, from, to }] of parts.drops.entries()) {
      const drips = parts.flows[i].drips(moment);
      parts.lifts[i](drips);
      drops.forEach((drop, i) => {
        drop.setAttribute('visibility', drips ? 'visible' : 'hidden');
        const share = still ? i / 3 : (i / 3 + (performance.now() % 900) / 900) % 1;
        drop.setAttribute('cy', (from + (to - from) * share).toFixed(1));
      });
    }
  }

  const numberOf = (field) => parts.numbers.find((one) => one.field === field);
  const set = (number, shown) => {
    const bounded = Math.min(number.most, Math.max(number.least, Math.round(shown / number.step) * number.step));
    if (Math.abs(bounded - number.value) > 1e-9) {
      live.change(new Map([[number.field, written(number, bounded)]]));
    }
  };

  const at = (event, toDrawing) => new DOMPoint(event.clientX, event.clientY).matrixTransform(toDrawing).y;
  svg.addEventListener('pointerdown', (event) => {
    const field = event.target.getAttribute('data-field');
    if (field) {
      const held = event.target.y.baseVal.value + 9;
      // as the drawing lies now: a longer answer above it moves it away under the pointer
      const toDrawing = svg.getScreenCTM().inverse();
      dragged = { field, off: at(event, toDrawing) - held, toDrawing };
      svg.setPointerCapture(event.pointerId);
      event.preventDefault();
      event.target.focus({ preventScroll: true });
    }
  });
  svg.addEventListener('pointermove', (event) => {
    if (dragged && parts.rods[dragged.field]) {
      set(numberOf(dragged.field), parts.rods[dragged.field].of(at(event, dragged.toDrawing) - dragged.off));
    }
  });
  for (const end of ['pointerup', 'pointercancel']) {
    svg.addEventListener(end, () => {
      dragged = null;
    });
  }
  svg.addEventListener('keydown', (event) => {
    const field = event.target.getAttribute?.('data-field');
    const number = field && numberOf(field);
    const steps = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (number && (steps !== undefined || event.key === 'Home' || event.key === 'End')) {
      event.preventDefault();
      set(number, steps !== undefined ? number.value + steps * number.step : event.key === 'Home' ? number.least : number.most);
    }
  });
  return { draw, move };
}
