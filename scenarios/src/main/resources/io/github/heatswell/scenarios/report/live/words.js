import { beside, element, isNarrow, label, line, path, scaleOf, shape, ticks } from './shapes.js';

/* What is said of the run: every sentence comes from the same narrative as on the command line; here they get their places. */

/** @param {import('./house.js').Live} live */
export function answerOf(live) {
  const { said } = live.run;
  document.getElementById('headline').textContent = said.verdict === '' ? `${said.headline}.` : said.verdict;
  document.getElementById('alarms').replaceChildren(...said.alarms.map((alarm) => element('p', { class: 'alarm' }, element('strong', {}, alarm.word), `${alarm.what} ${alarm.advice}`)));
}

/**
 * How far the headline is to be trusted: what such houses did once they were asked, or that it is close.
 *
 * @param {import('./house.js').Live} live
 * @param {{ headline: string } | null} sampled
 */
export function temperedBy({ run, house }, sampled) {
  const opens = run.limits[0]?.pressure;
  const close = run.discharged === 0 && opens - run.peak < 0.15 * opens;
  document.getElementById('tempered').textContent = house.spelled(sampled ? sampled.headline : close ? 'That is close: “How sure is this?” below counts in how many such houses a relief valve drips.' : '');
}

/** What a section says, so that it is built anew only for something else. */
const advised = new WeakMap();

/** @param {import('./house.js').Live} live */
export function adviceOf(section, live) {
  const { said } = live.run;
  const key = JSON.stringify(said);
  if (advised.get(section) === key) {
    return;
  }
  advised.set(section, key);
  const told = said.verdict === '' ? [] : [`${said.headline}.`];
  const parts = [...told, ...said.remarks, said.facts].map((text) => element('p', {}, text));
  const findings = said.findings.filter((one) => one.severity !== 'note');
  const notes = said.findings.filter((one) => one.severity === 'note');
  const shown = (one) => element('div', { class: `finding ${one.severity}` }, element('p', {}, element('span', { class: 'severity' }, one.severity), ` ${one.sentence}`), element('p', {}, one.advice), element('p', { class: 'quiet' }, `Source: ${one.source}.`));
  const open = section.querySelector('details')?.open;
  const rest = element('details', open ? { open: '' } : {}, element('summary', {}, 'Notes'), ...notes.map(shown));
  section.replaceChildren(element('h2', {}, 'Why, and what to do'), ...parts, ...findings.map(shown), ...(notes.length > 0 ? [rest] : []));
}

/**
 * The step list beside the drawing, for readers who do not see it and for whoever wants to go straight to a moment.
 *
 * @param {import('./house.js').Live} live
 */
export function stepsOf(list, live, goTo) {
  const many = 400;
  const { events } = live.run;
  list.replaceChildren(...events.slice(0, many).map((event) => {
    const button = element('button', { type: 'button' }, `${live.said('TIME', event.time)}: ${event.words}, ${live.said('GAUGE_PRESSURE', event.pressure)}, ${live.said('TEMPERATURE', event.temperature)}`);
    button.addEventListener('click', () => goTo(event.time));
    return element('li', {}, button);
  }), ...(events.length > many ? [element('li', {}, `and ${events.length - many} more events.`)] : []));
}

/**
 * Every number at the cursor and of the whole run, in the units of the house.
 *
 * @param {import('./house.js').Live} live
 */
export function numbersTable(table, live, moment) {
  const { run } = live;
  const air = run.trace.atmosphere;
  const rows = [
    ['Time', live.said('TIME', moment.time)],
    ['Pressure at the drain cock', live.said('GAUGE_PRESSURE', moment.PRESSURE_ABSOLUTE - air)],
    ['Gauge reads', live.said('GAUGE_PRESSURE', moment.GAUGE_READING)],
    ['Mains pressure', live.said('GAUGE_PRESSURE', moment.MAINS_ABSOLUTE - air)],
    ['Water, top of the tank', live.said('TEMPERATURE', moment.WATER_TOP)],
    ['Water, mean', live.said('TEMPERATURE', moment.WATER_MEAN)],
    ['Water, bottom', live.said('TEMPERATURE', moment.WATER_BOTTOM)],
    ['Water at the taps', live.said('TEMPERATURE', moment.WATER_AT_TAP)],
    ['Heater input', live.said('POWER', moment.HEATER_POWER)],
    ['Water in the vessel', live.said('VOLUME', moment.VESSEL_WATER)],
    ['Relief flow', live.said('FLOW', moment.RELIEF_FLOW)],
    ['Discharged so far', live.said('VOLUME', moment.RELIEVED_TOTAL)],
    ['Supplied so far', live.said('VOLUME', moment.INFLOW_TOTAL)],
    ['Returned to the mains so far', live.said('VOLUME', moment.RETURNED_TOTAL)],
    ['Hot water drawn so far', live.said('VOLUME', moment.DRAWN_TOTAL)],
    ['Peak of the run', `${live.said('GAUGE_PRESSURE', run.peak)} at ${live.said('TIME', run.peakTime)}`],
    ['Discharged in the run', `${live.said('VOLUME', run.discharged)} in ${run.openings} ${run.openings === 1 ? 'opening' : 'openings'}`],
    ...run.limits.map((limit) => [`Room below ${limit.name}`, limit.room]),
    ['Room below the working pressure', run.working.room],
  ];
  table.replaceChildren(element('tbody', {}, ...rows.map(([what, value]) => element('tr', {}, element('th', { scope: 'row' }, live.house.spelled(what)), element('td', {}, value)))));
}

/**
 * The peak over the size of the vessel, with the sizes on sale: of the worst heat-up of this house with each. Which of them keeps its
 * margin takes some hundred houses more, which a worker looks at once the picture is a screen away.
 *
 * @param {import('./house.js').Live} live
 */
export function sizesOf(section, live, lab) {
  let turn = 0;
  let seen = false;
  let asked = true;
  /** @type {{ volume?: number, said?: string[], refused?: string } | null} */
  let advised = null;
  const found = [];

  async function advise() {
    if (asked || !seen) {
      return;
    }
    asked = true;
    const mine = turn;
    const answer = await lab.ask('advised', live).catch((fault) => ({ refused: fault.message }));
    if (mine === turn) {
      advised = answer;
      show();
    }
  }
  new IntersectionObserver((all) => {
    seen = all.at(-1).isIntersecting;
    advise();
  }, { rootMargin: '100%' }).observe(section);

  /** Whether there is a vessel at work: one that failed is replaced. */
  const fitted = () => live.described.vessels[0]?.condition === 'sound';

  function show() {
    const { described, run } = live;
    const pressure = scaleOf(live.house, 'GAUGE_PRESSURE');
    const opens = run.limits[0]?.pressure;
    const { limit } = described;
    const highest = Math.max(...found.map((one) => one.peak));
    const most = pressure.shown(Math.max(Math.min(highest, 1.4 * Math.max(opens ?? 0, limit)), opens ?? 0, limit)) * 1.1;
    const width = isNarrow() ? 376 : 720;
    const [left, right, top, bottom] = [44, width - 12, 42, 196];
    const y = (si) => bottom - ((bottom - top) * Math.min(most, pressure.shown(si))) / most;
    const apart = (right - left) / found.length;
    const svg = shape('svg', { viewBox: `0 0 ${width} 226`, role: 'group', 'aria-label': live.house.spelled('Peak pressure with each vessel on sale') });
    for (const mark of ticks(0, most, 4)) {
      const at = bottom - ((bottom - top) * mark) / most;
      svg.append(line(left, at, right, at, 'grid'), label(left - 6, at + 4, String(mark), { class: 'small', 'text-anchor': 'end' }));
    }
    const charged = live.said('GAUGE_PRESSURE', found[0].precharge);
    svg.append(label(4, 14, live.house.spelled(isNarrow() ? `Peak, ${pressure.symbol}; charged to ${charged}, relief valve left out` : `Peak pressure, ${pressure.symbol}; each vessel charged to ${charged}, the relief valve left out`), { class: 'name pressure' }));
    const enough = (one) => one.peak <= limit;
    const drawn = found.flatMap((one, i) => [-8, 0, 8].map((off) => [left + (i + 0.5) * apart + off, y(one.peak)]));
    const names = [];
    const dripping = found.findIndex((one) => one.drips);
    if (dripping >= 0) {
      const [from, at] = [left + (dripping + 0.5) * apart - 8, y(opens) - 12];
      names.push(label(from, at, 'would drip', { class: 'small halo' }));
      drawn.push([from, at], [from + 40, at], [from + 80, at]);
    }
    const level = (si, words, kind) => {
      svg.append(line(left, y(si), right, y(si), kind));
      names.push(beside({ left, right, y: y(si), words: `${words} ${live.said('GAUGE_PRESSURE', si)}`, kind: 'limit' }, drawn));
    };
    svg.append(path(`M${found.map((one, i) => `${left + (i + 0.5) * apart} ${y(one.peak)}`).join('L')}`, 'curve pressure'));
    if (opens !== undefined) {
      level(opens, 'relief valve opens:', 'limit');
    }
    level(limit, isNarrow() ? 'limit:' : 'limit of the sizing:', 'target');
    const smallest = found.find(enough);
    found.forEach((one, i) => {
      const at = left + (i + 0.5) * apart;
      const mine = described.vessels[0] && Math.abs(described.vessels[0].volume - one.volume) < 1e-9;
      const peak = one.drips ? 'would drip' : (one.higher ? 'over ' : '') + live.said('GAUGE_PRESSURE', one.peak);
      const judged = enough(one) ? 'enough' : 'above the limit';
      const taken = advised && Math.abs(advised.volume - one.volume) < 1e-9;
      const words = `${live.said('VOLUME', one.volume)}: ${peak}, ${judged}${taken ? ', recommended' : ''}`;
      const [cx, cy] = [at, y(one.peak)];
      const mark = enough(one) ? shape('circle', { cx, cy, r: 8 }) : shape('rect', { x: cx - 8, y: cy - 8, width: 16, height: 16 });
      const pin = shape('g', { class: enough(one) ? 'size enough' : 'size', tabindex: 0, role: 'button', 'aria-label': words }, mark, shape('title', {}, words));
      const fit = () => live.change(one.changes);
      pin.addEventListener('click', fit);
      pin.addEventListener('keydown', (event) => {
        if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          fit();
        }
      });
      if (pressure.shown(one.peak) > most) { // beyond the axis
        names.push(label(at, cy + 26, String(Math.round(pressure.shown(one.peak))), { class: 'small halo', 'text-anchor': 'middle' }));
      }
      if (taken) {
        names.push(shape('circle', { cx, cy, r: 13, class: 'advised' }));
      }
      svg.append(pin, label(at, bottom + 22, live.said('VOLUME', one.volume).split(/\s/u)[0], { class: mine ? 'value' : 'small', 'text-anchor': 'middle' }));
    });
    svg.append(...names);
    const size = (one) => live.said('VOLUME', one.volume);
    const [own] = described.vessels;
    const otherwise = own && (!fitted() || live.said('GAUGE_PRESSURE', own.precharge) !== charged);
    const told = [
      `By size, ${scaleOf(live.house, 'VOLUME').symbol}, each ${fitted() ? '' : 'new and '}charged to the supply, ${charged}, and with the relief valve left out: where it would drip, no higher pressure is reached. Filled: the peak of a full heat-up from cold stays within the limit. Hollow: it does not. ${advised?.volume ? 'Ringed: the recommended size. ' : ''}Choose one to fit it, so charged.${otherwise ? ` The pressure over time is of the vessel as it is: ${fitted() ? `charged to ${live.said('GAUGE_PRESSURE', own.precharge)}` : 'not at work'}.` : ''}`,
      ...(advised?.said ? advised.said : [smallest ? `${size(smallest)} is the smallest that is just enough by the best estimates, with no margin.${asked || !seen ? '' : ' Which one keeps a margin is being worked out …'}` : 'None of them stays within the limit at this supply.']),
    ];
    section.replaceChildren(element('h2', {}, live.house.spelled('Which vessel?')), svg, ...told.map((words) => element('p', { class: 'quiet' }, live.house.spelled(words))));
  }

  /** Starts again for the house as it is; each size is a heat-up of its own, and the page stays free between them. */
  function search() {
    turn += 1;
    const mine = turn;
    found.length = 0;
    advised = null;
    asked = true;
    const { described, house } = live;
    if (described.vessels.length > 1 || live.run.trace.end > 8 * 86_400) {
      section.replaceChildren();
      return;
    }
    const volume = scaleOf(house, 'VOLUME');
    const pressure = scaleOf(house, 'GAUGE_PRESSURE');
    const present = described.vessels[0];
    const sizes = [...described.sizes];
    const next = () => {
      if (mine !== turn) {
        return;
      }
      const size = sizes.shift();
      if (!size) {
        asked = false;
        show();
        advise();
        return;
      }
      const tried = house.sized(size.volume);
      if (tried.refused) {
        section.replaceChildren(element('h2', {}, house.spelled('Which vessel?')), element('p', {}, house.spelled(`No size: cannot size a vessel: ${tried.refused}.`)));
        return;
      }
      const written = (scale, si) => `${Number(scale.shown(si).toFixed(3))} ${scale.unit}`;
      const changes = new Map([['vessel.volume', written(volume, size.volume)], ['vessel.precharge', written(pressure, tried.precharge)]]);
      if (!present) {
        changes.set('vessel', null);
      } else if (!fitted()) {
        changes.set('vessel.condition', 'sound');
      }
      found.push({ ...tried, volume: size.volume, changes });
      setTimeout(next, 0);
    };
    setTimeout(next, 250);
  }
  return { search, /** Draws anew what was found, for another width or for paper. */ redraw: () => found.length > 0 && show() };
}
