import { beside, isNarrow, label, line, path, scaleOf, shape, ticks } from './shapes.js';
import { stopsOf } from './house.js';

/* Pressure and temperature over one time axis. The axis is the control: it scrubs the drawing, and events are pins on it. */

const BOX = { left: 44, right: 704, top: 26, between: 218, second: 258, bottom: 356 };
const NARROW = 376;

/**
 * The lowest and highest value of each pixel, so that a long run is drawn as fast as a short one and no peak is lost; and what events
 * saw between the samples.
 */
function curve(values, x, y, between = []) {
  const every = Math.max(1, Math.floor(values.length / 600));
  const points = [];
  for (let from = 0; from < values.length; from += every) {
    let least = from;
    let most = from;
    for (let i = from; i < Math.min(values.length, from + every); i += 1) {
      least = values[i] < values[least] ? i : least;
      most = values[i] > values[most] ? i : most;
    }
    for (const i of new Set([Math.min(least, most), Math.max(least, most)])) {
      points.push([x(i), y(values[i])]);
    }
  }
  const last = values.length - 1;
  points.push([x(last), y(values[last])], ...between);
  points.sort((one, other) => one[0] - other[0]);
  return `M${points.map(([at, height]) => `${at.toFixed(1)} ${height.toFixed(1)}`).join('L')}`;
}

/** Round times of an axis; by the clock where the house has one. */
function timeMarks({ house, run }, most) {
  const { end, begins, byClock } = run.trace;
  const hours = end / 3600;
  const step = [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 168, 720, 2190, 8766].find((one) => hours / one <= most) ?? 87660;
  const marks = [];
  if (byClock) {
    for (let i = Math.ceil(begins / 3600 / step - 1e-9); i * step <= begins / 3600 + hours + 1e-9; i += 1) {
      marks.push({ time: i * step * 3600 - begins, words: house.clock((i * step * 60) % 1440) });
    }
    return marks;
  }
  for (let i = 0; i * step <= hours + 1e-9; i += 1) {
    const at = i * step;
    marks.push({ time: at * 3600, words: step < 1 ? `${at * 60} min` : step >= 24 ? `${at / 24} d` : `${at} h` });
  }
  return marks;
}

/**
 * Sets up the trace; returns what draws a run, and what moves its cursor.
 *
 * @param {import('./house.js').Live} live
 */
export function traceOf(svg, live, goTo) {
  let now = null;
  let x = (_) => 0;
  let values = { gauge: (_) => 0, atmosphere: 0 };
  let band = null;
  let right = BOX.right;

  /** The pressures of a run over time, with those of its events. */
  function pressures(run, atX, y) {
    const { columns, count, step, end, atmosphere } = run.trace;
    const between = run.events.map((event) => [atX(event.time), y(event.pressure)]);
    return curve(columns.PRESSURE_ABSOLUTE.map((absolute) => absolute - atmosphere), (i) => atX(i === count - 1 ? end : i * step), y, between);
  }

  function panel(name, top, bottom, scale, lines, least, most) {
    const shown = (si) => scale.shown(si);
    const y = (si) => bottom - ((bottom - top) * (shown(si) - least)) / (most - least);
    const group = shape('g');
    for (const mark of ticks(least, most, 4)) {
      const at = bottom - ((bottom - top) * (mark - least)) / (most - least);
      group.append(line(BOX.left, at, right, at, 'grid'), label(BOX.left - 6, at + 4, String(mark), { class: 'small', 'text-anchor': 'end' }));
    }
    group.append(label(4, top - 12, `${name}, ${scale.symbol}`, { class: `name ${lines}` }));
    return { group, y };
  }

  function draw() {
    const narrow = isNarrow();
    right = narrow ? NARROW - 12 : BOX.right;
    svg.setAttribute('viewBox', `0 0 ${narrow ? NARROW : 720} 400`);
    const { run, before, described } = live;
    const { trace } = run;
    const { columns, count, step, end, atmosphere } = trace;
    const last = count - 1;
    const timeX = (time) => BOX.left + ((right - BOX.left) * time) / end;
    x = timeX;
    const indexX = (i) => timeX(i === last ? end : i * step);
    const pressure = scaleOf(live.house, 'GAUGE_PRESSURE');
    const highest = Math.max(run.peak, ...(band ? band.high.filter((si) => !Number.isNaN(si)) : []), ...run.limits.map((limit) => limit.pressure), before === run ? 0 : before.peak);
    const top = pressure.shown(highest) * 1.08;
    const first = panel('Pressure', BOX.top, BOX.between, pressure, 'pressure', 0, top);
    const temperature = scaleOf(live.house, 'TEMPERATURE');
    const cold = Math.min(...columns.WATER_BOTTOM.filter((_, i) => i % 16 === 0));
    const warm = Math.max(...columns.WATER_TOP.filter((_, i) => i % 16 === 0), described.heater.setPoint);
    const low = Math.floor(temperature.shown(cold) / 10) * 10;
    const second = panel('Water at the top of the tank', BOX.second, BOX.bottom, temperature, 'temperature', low, Math.max(low + 20, temperature.shown(warm) * 1.05));
    const all = [first.group, second.group];
    /** @type {[number, string][]} */
    const levels = [];
    for (const { time, words } of timeMarks(live, narrow ? 4 : 7)) {
      all.push(line(timeX(time), BOX.top, timeX(time), BOX.bottom, 'grid'), label(timeX(time), 394, words, { class: 'small', 'text-anchor': timeX(time) > right - 12 ? 'end' : 'middle' }));
    }
    for (const limit of run.limits) {
      const y = first.y(limit.pressure);
      all.push(line(BOX.left, y, right, y, 'limit'));
      levels.push([y, `${limit.name}: ${live.said('GAUGE_PRESSURE', limit.pressure)}`]);
    }
    if (Math.abs(described.limit - (run.limits[0]?.pressure ?? run.working.pressure)) > 1) {
      const y = first.y(described.limit);
      all.push(line(BOX.left, y, right, y, 'target'));
      levels.push([y, `${narrow ? 'limit' : 'limit of the sizing'}: ${live.said('GAUGE_PRESSURE', described.limit)}`]);
    }
    if (run.working.pressure <= highest * 1.08) {
      const y = first.y(run.working.pressure);
      all.push(line(BOX.left, y, right, y, 'limit'));
      levels.push([y, `tank: ${live.said('GAUGE_PRESSURE', run.working.pressure)}`]);
    }
    if (before !== run) {
      all.push(path(pressures(before, (time) => Math.min(right, timeX(time)), first.y), 'curve before'), label(right, BOX.between - 8, 'dotted: before your changes', { class: 'small', 'text-anchor': 'end' }));
    }
    if (band) {
      const at = (i) => timeX(Math.min(end, i * band.step)).toFixed(1);
      const known = [...band.low.keys()].filter((i) => !Number.isNaN(band.low[i]));
      const d = [...known.map((i) => `${at(i)} ${first.y(band.high[i]).toFixed(1)}`), ...known.reverse().map((i) => `${at(i)} ${first.y(band.low[i]).toFixed(1)}`)].join('L');
      all.push(path(`M${d}z`, 'band'));
    }
    const gauge = pressures(run, timeX, first.y);
    const drawn = gauge.slice(1).split('L').map((point) => point.split(' ').map(Number));
    const names = levels.map(([y, words]) => beside({ left: BOX.left, right, y, words, kind: 'limit' }, drawn));
    all.push(path(gauge, 'curve pressure'), path(curve(columns.WATER_TOP, indexX, second.y), 'curve temperature'));
    all.push(...names, line(BOX.left, BOX.bottom + 8, right, BOX.bottom + 8, 'axis'));
    now = shape('g', {}, line(0, BOX.top, 0, BOX.bottom + 8, 'now'), shape('circle', { cx: 0, cy: 0, r: 4 }));
    const sheet = shape('rect', { x: BOX.left, y: 0, width: right - BOX.left, height: BOX.bottom + 4, class: 'sheet' });
    all.push(now, sheet);
    for (const event of stopsOf(run)) {
      const pin = shape('circle', { cx: timeX(event.time), cy: BOX.bottom + 8, r: 7, class: event.kind.startsWith('RELIEF') || event.endsRun ? 'pin relief' : 'pin' }, shape('title', {}, `${live.said('TIME', event.time)}: ${event.words}`));
      pin.addEventListener('click', () => goTo(event.time));
      all.push(pin);
    }
    svg.replaceChildren(...all);
    values = { gauge: first.y, atmosphere };
  }

  function move(moment) {
    const at = x(moment.time).toFixed(1);
    now.setAttribute('transform', `translate(${at} 0)`);
    now.lastChild.setAttribute('cy', values.gauge(moment.PRESSURE_ABSOLUTE - values.atmosphere).toFixed(1));
  }

  function scrub(event) {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    goTo(((point.x - BOX.left) / (right - BOX.left)) * live.run.trace.end);
  }
  svg.addEventListener('pointerdown', (event) => {
    if (event.target.classList.contains('sheet')) {
      svg.setPointerCapture(event.pointerId);
      scrub(event);
    }
  });
  svg.addEventListener('pointermove', (event) => {
    if (svg.hasPointerCapture(event.pointerId)) {
      scrub(event);
    }
  });
  return {
    draw, move,
    /** Draws between which pressures most houses of this kind lie, or, of null, takes that away. */
    band: (answer) => {
      if (answer !== band) {
        band = answer;
        const at = now.getAttribute('transform');
        const height = now.lastChild.getAttribute('cy');
        draw();
        if (at !== null) { // else it was drawn for a new house, and is moved to its moment next
          now.setAttribute('transform', at);
          now.lastChild.setAttribute('cy', height);
        }
      }
    },
  };
}
