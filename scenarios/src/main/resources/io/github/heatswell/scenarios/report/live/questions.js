import { element, isNarrow, label, line, path, scaleOf, shape, ticks, withUnit } from './shapes.js';

/* Questions that take many runs: each is a part of the page that is worked out when it is opened, and again after a change. */

const LONGEST = 8 * 86_400;

/** A part of the page with a question: `show` makes what is seen of an answer. */
function partOf(details, ask, show, closed = () => {}) {
  const body = details.querySelector('div');
  let turn = 0;
  let waiting = 0;
  async function work(live) {
    turn += 1;
    const mine = turn;
    body.setAttribute('aria-busy', 'true');
    try {
      const answer = await ask(live);
      if (mine === turn) {
        body.replaceChildren(...show(answer, live));
      }
    } catch (fault) {
      if (mine === turn) {
        body.replaceChildren(element('p', {}, `No answer: ${fault.message}.`));
      }
    }
    if (mine === turn) {
      body.setAttribute('aria-busy', 'false');
    }
  }
  return (live, after) => {
    clearTimeout(waiting);
    turn += 1;
    if (!details.open) {
      body.replaceChildren();
      closed();
      return;
    }
    if (body.childElementCount === 0) {
      body.replaceChildren(element('p', { class: 'quiet' }, 'Working it out …'));
    }
    closed();
    waiting = setTimeout(() => work(live), after);
  };
}

/**
 * Peaks as fields of one colour, the darker the higher; where the valve drips they are hatched.
 *
 * @param {import('./house.js').Live} live
 */
function mapOf(answer, live) {
  const [volumes, precharges, peaks, drips, keeps] = ['volumes', 'precharges', 'peaks', 'drips', 'keeps'].map((name) => Array.from(answer[name]));
  const { reliefSet } = answer;
  const pressure = scaleOf(live.house, 'GAUGE_PRESSURE');
  const volume = scaleOf(live.house, 'VOLUME');
  const width = isNarrow() ? 376 : 720;
  const [left, right, top, bottom] = [44, width - 12, 24, 330];
  const log = (si) => Math.log(si / volumes[0]) / Math.log(volumes.at(-1) / volumes[0]);
  const x = (si) => left + (right - left) * log(si);
  const y = (si) => bottom - ((bottom - top) * (si - precharges[0])) / (precharges.at(-1) - precharges[0]);
  const least = Math.min(...peaks);
  const most = Number.isNaN(reliefSet) ? Math.max(...peaks) : reliefSet;
  const middle = (values, i, at) => (i < 0 ? at(values[0]) : i >= values.length - 1 ? at(values.at(-1)) : (at(values[i]) + at(values[i + 1])) / 2);
  const svg = shape('svg', { viewBox: `0 0 ${width} 396`, role: 'img', 'aria-label': answer.headline });
  const cells = shape('g', { class: 'cells' });
  volumes.forEach((_, row) => precharges.forEach((__, column) => {
    const peak = peaks[row * precharges.length + column];
    const share = Math.min(1, Math.max(0, (peak - least) / (most - least || 1)));
    const [x1, x2] = [middle(volumes, row - 1, x), middle(volumes, row, x)];
    const [y1, y2] = [middle(precharges, column, y), middle(precharges, column - 1, y)];
    cells.append(shape('rect', { x: x1, y: y1, width: x2 - x1, height: y2 - y1, 'fill-opacity': 0.04 + 0.46 * share }));
  }));
  svg.append(cells);
  const edge = (sizes, kind) => {
    const d = precharges.flatMap((si, i) => (Number.isNaN(sizes[i]) ? [] : [`${x(sizes[i]).toFixed(1)} ${y(si).toFixed(1)}`])).join('L');
    if (d !== '') {
      svg.append(path(`M${d}`, kind));
    }
    return d !== '';
  };
  const kept = edge(keeps, 'target');
  if (edge(drips, 'limit')) {
    svg.append(label(left + 10, bottom - 12, live.house.spelled('drips'), { class: 'value' }), label(right - 10, (top + bottom) / 2, 'stays shut', { class: 'value', 'text-anchor': 'end' }));
  }
  for (const mark of ticks(pressure.shown(precharges[0]), pressure.shown(precharges.at(-1)), 5)) {
    const at = y(pressure.si(mark));
    svg.append(line(left - 4, at, left, at, 'axis'), label(left - 7, at + 4, String(mark), { class: 'small', 'text-anchor': 'end' }));
  }
  let last = -100;
  for (const si of volumes) {
    const at = x(si);
    svg.append(line(at, bottom, at, bottom + 4, 'axis'));
    if (at - last > 26) {
      svg.append(label(at, bottom + 20, live.said('VOLUME', si).split(/\s/u)[0], { class: 'small', 'text-anchor': 'middle' }));
      last = at;
    }
  }
  const mine = live.described.vessels[0];
  svg.append(label(4, 14, `Precharge, ${pressure.symbol}`, { class: 'name' }), label(right, bottom + 40, live.house.spelled(`vessel on sale, ${volume.symbol}`), { class: 'small', 'text-anchor': 'end' }));
  if (mine && mine.volume >= volumes[0] && mine.volume <= volumes.at(-1)) {
    svg.append(shape('circle', { cx: x(mine.volume), cy: y(mine.precharge), r: 8, class: 'pin' }, shape('title', {}, 'this house')), label(x(mine.volume), y(mine.precharge) - 14, 'yours', { class: 'value', 'text-anchor': 'middle' }));
  }
  const key = `Darker: higher peak.${kept ? ' Right of the solid line: within the limit of the sizing.' : ''} ${answer.facts}`;
  return [element('p', {}, answer.headline), svg, element('p', { class: 'quiet' }, key)];
}

/**
 * A table of what the gauge should read, with a place for what it does read.
 *
 * @param {import('./house.js').Live} live
 */
function sheetOf(answer, live, typed) {
  if (answer.refused) {
    return [element('p', {}, `No check: it needs a heat-up, and ${answer.refused}`)];
  }
  const pressure = scaleOf(live.house, 'GAUGE_PRESSURE');
  const said = (si) => live.said('GAUGE_PRESSURE', si);
  const off = new Map();
  const meaning = element('p', { role: 'status' });
  const rows = answer.readings.map((reading) => {
    const input = element('input', { type: 'text', inputmode: 'decimal', autocomplete: 'off', 'aria-label': `Your reading, ${reading.when}`, value: typed.get(reading.when) ?? '' });
    const judged = element('td', { role: 'status' });
    const judge = () => {
      typed.set(reading.when, input.value);
      off.delete(reading.kind);
      judged.className = '';
      judged.textContent = '';
      const text = withUnit(input.value, pressure.unit);
      if (text === '') {
        return;
      }
      const read = live.house.reading(text);
      if (read.wrong) {
        judged.className = 'wrong';
        judged.textContent = read.wrong;
        return;
      }
      const beyond = (bound) => `${Number(Math.abs(pressure.shown(read.pressure) - pressure.shown(bound)).toPrecision(2))}\u00a0${pressure.symbol} ${bound === reading.low ? 'below what agrees' : 'above what agrees'}`;
      const words = read.pressure > reading.high ? `too high, ${beyond(reading.high)}` : read.pressure < reading.low ? `too low, ${beyond(reading.low)}` : 'agrees';
      judged.className = words === 'agrees' ? '' : 'wrong';
      if (words !== 'agrees') {
        off.set(reading.kind, read.pressure - (read.pressure > reading.high ? reading.high : reading.low));
      }
      judged.append(...(read.hazard ? [element('strong', {}, `HAZARD: ${read.hazard}`), ' '] : []), words);
    };
    const mean = () => {
      judge();
      meaning.textContent = live.house.offSheet([...off.keys()], [...off.values()]);
    };
    input.addEventListener('input', mean);
    mean();
    return element('tr', {}, element('th', { scope: 'row' }, reading.when), element('td', { 'data-head': 'Expected' }, said(reading.expected)), element('td', { 'data-head': 'Agrees' }, `${said(reading.low)} to ${said(reading.high)}`), element('td', { 'data-head': `Yours, ${pressure.symbol}` }, input), judged);
  });
  const heads = ['Read the gauge', 'Expected', 'Agrees', `Yours, ${pressure.symbol}`, ''].map((head) => element('th', { scope: 'col' }, head));
  return [
    element('ol', {}, ...answer.steps.map((step) => element('li', {}, step))),
    element('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': 'What the gauge should read' }, element('table', { class: 'readings' }, element('thead', {}, element('tr', {}, ...heads)), element('tbody', {}, ...rows))),
    meaning,
    ...answer.remarks.map((remark) => element('p', { class: 'quiet' }, remark)),
  ];
}

function bandOf(answer) {
  return [
    element('p', {}, answer.headline),
    element('p', {}, 'The shaded band on the pressure curve covers nine in ten of these houses at each moment.'),
    element('p', { class: 'quiet' }, answer.usual ? 'The scenario gives no uncertain values, so these usual ranges were varied (common practice, no source):' : 'Varied as the scenario says:'),
    element('ul', { class: 'quiet' }, ...answer.varied.map((one) => element('li', {}, one.replace('+-', '±')))),
  ];
}

/**
 * Sets the parts up; what it returns hears of every change of the house. `band` is given what the trace shows, or null.
 *
 * @param {import('./house.js').Live} live
 */
export function questionsOf(live, lab, fitted, band) {
  const at = (id) => /** @type {HTMLDetailsElement} */ (document.getElementById(id));
  const typed = new Map();
  const parts = Object.entries({
    map: partOf(at('map'), () => lab.ask('map', live, fitted()), mapOf),
    sure: partOf(at('sure'), () => lab.sample(live), (answer) => {
      band(answer);
      return bandOf(answer);
    }, () => band(null)),
    check: partOf(at('check'), () => lab.ask('check', live), (answer) => sheetOf(answer, live, typed)),
  });
  const hidden = { map: () => live.described.vessels.length > 1, sure: () => live.run.trace.end > LONGEST, check: () => false };
  for (const [id, part] of parts) {
    at(id).addEventListener('toggle', () => part(live, 0));
  }
  new IntersectionObserver((seen) => {
    if (seen.some((one) => one.isIntersecting)) {
      lab.ready(live);
    }
  }, { rootMargin: '50%' }).observe(at('sure'));
  return () => {
    for (const [id, part] of parts) {
      at(id).hidden = hidden[id]();
      if (at(id).open) {
        part(live, 500);
      }
    }
  };
}
