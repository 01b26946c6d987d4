import { drawingOf } from './drawing.js';
import { traceOf } from './trace.js';
import { changedOf, controlsOf } from './controls.js';
import { liveHouse, momentOf, stopsOf } from './house.js';
import { labOf } from './lab.js';
import { adviceOf, answerOf, numbersTable, sizesOf, stepsOf, temperedBy } from './words.js';
import { questionsOf } from './questions.js';
import { filesOf, readFragment } from './files.js';

/* Puts the page together: one house, one moment, and everything that shows them. */

/** The simulation as script: it lies compressed in the page. */
async function unpacked(letters) {
  const bytes = Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'))).text();
}

function startPage(script) {
  const at = (id) => document.getElementById(id);
  const cursor = /** @type {HTMLInputElement} */ (at('cursor'));
  const speed = /** @type {HTMLSelectElement} */ (at('speed'));
  const [steps, numbers] = ['steps', 'numbers'].map((id) => /** @type {HTMLDetailsElement} */ (at(id)));
  const engine = {};
  new Function('exports', script)(engine);
  const own = at('scenario').textContent;
  const still = matchMedia('(prefers-reduced-motion: reduce)');
  let time = 0;
  let playing = 0;
  /** What shows the house: each part with what draws or moves it. */
  const parts = {};

  const live = liveHouse(engine, () => {
    time = Math.min(time, live.run.trace.end);
    showHouse();
  });

  function trouble(faults) {
    const box = at('trouble');
    box.hidden = faults.length === 0;
    box.textContent = faults.map((fault) => (fault.line > 0 ? `Line ${fault.line}, column ${fault.column}: ${fault.message}` : fault.message)).join('\n');
  }

  /** A tap opened at the time of the cursor, every day; only where the house says nothing of its hot-water use, which it would replace. */
  const tap = {
    isOffered: () => live.before.trace.columns.DRAWN_TOTAL.at(-1) === 0,
    isOpened: () => live.changes.has('draws'),
    toggle: () => {
      const { us } = live.described;
      const minutes = Math.floor(((live.run.trace.begins + time) / 60) % 1440);
      const clock = `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
      trouble(live.change(new Map([['draws', tap.isOpened() ? null : `[{ at: '${clock}', volume: ${us ? '5 gal' : '20 L'}, flow: ${us ? '2 gal/min' : '8 L/min'} }]`]])));
    },
  };

  function showMoment() {
    const moment = momentOf(live.run, time);
    parts.drawing.move(moment, still.matches || playing === 0);
    parts.trace.move(moment);
    const clock = live.said('TIME', time);
    cursor.value = String(time);
    cursor.setAttribute('aria-valuetext', clock);
    at('clock').textContent = clock;
    const gauge = live.said('GAUGE_PRESSURE', moment.PRESSURE_ABSOLUTE - live.run.trace.atmosphere);
    const open = moment.RELIEF_FLOW > 0 ? ', relief valve open' : '';
    at('moment').textContent = `${clock}: ${gauge}, ${live.said('TEMPERATURE', moment.WATER_TOP)} at the top of the tank${open}, ${live.said('VOLUME', moment.RELIEVED_TOTAL)} discharged`;
    if (numbers.open) {
      numbersTable(at('table'), live, moment);
    }
  }

  function showHouse() {
    const { described, run } = live;
    document.title = `Heatswell: ${described.title}`;
    const changed = live.changes.size > 0;
    at('title').textContent = changed ? 'The house as it was changed here' : described.title;
    at('question').textContent = changed ? `Its file: ${live.own.title}. Changed: ${changedOf(live)}.` : described.question;
    Object.assign(cursor, { max: String(run.trace.end), step: String(Math.min(run.trace.step, run.trace.end / 200)) });
    answerOf(live);
    temperedBy(live, null);
    parts.controls.show();
    parts.drawing.draw();
    parts.trace.draw();
    adviceOf(at('advice'), live);
    if (steps.open) {
      stepsOf(at('events'), live, goTo);
    }
    parts.sizes.search();
    parts.questions();
    showMoment();
  }

  /** Draws everything anew as it is, for another width or for paper. */
  function redraw() {
    parts.drawing.draw();
    parts.trace.draw();
    parts.sizes.redraw();
    showMoment();
  }

  function goTo(wanted) {
    time = Math.min(live.run.trace.end, Math.max(0, wanted));
    showMoment();
  }

  function stop() {
    cancelAnimationFrame(playing);
    playing = 0;
    at('play').setAttribute('aria-pressed', 'false');
    at('play').textContent = 'Run';
    showMoment();
  }

  const later = () => stopsOf(live.run).find((event) => event.time > time + 1e-6)?.time ?? live.run.trace.end;

  /** Runs by itself up to the next pin; a reader who wants no motion goes there at once. */
  function play() {
    if (playing) {
      stop();
      return;
    }
    if (time >= live.run.trace.end) {
      time = 0;
    }
    const until = later();
    if (still.matches) {
      goTo(until);
      return;
    }
    at('play').setAttribute('aria-pressed', 'true');
    at('play').textContent = 'Stop';
    let last = performance.now();
    const frame = (now) => {
      time = Math.min(until, time + ((now - last) / 1000) * Number(speed.value));
      last = now;
      if (time >= until) {
        stop();
      } else {
        playing = requestAnimationFrame(frame);
        showMoment();
      }
    };
    playing = requestAnimationFrame(frame);
  }

  Object.assign(parts, {
    drawing: drawingOf(at('drawing'), at('notes'), live, tap), trace: traceOf(at('trace'), live, goTo), controls: controlsOf(at('controls'), live, tap), 
  });
  const lab = labOf(script);
  parts.sizes = sizesOf(at('sizes'), live, lab);
  parts.questions = questionsOf(live, lab, parts.controls.fitted, (sampled) => {
    parts.trace.band(sampled);
    temperedBy(live, sampled);
  });
  filesOf(live, own, (words) => {
    at('done').textContent = words;
  }, trouble);
  at('controls').addEventListener('submit', (event) => event.preventDefault());
  cursor.addEventListener('input', () => goTo(Number(cursor.value)));
  at('play').addEventListener('click', play);
  at('on').addEventListener('click', () => goTo(later()));
  at('back').addEventListener('click', () => goTo(stopsOf(live.run).filter((event) => event.time < time - 1e-6).at(-1)?.time ?? 0));
  steps.addEventListener('toggle', () => stepsOf(at('events'), live, goTo));
  numbers.addEventListener('toggle', showMoment);

  function openAddress() {
    const { name } = at('scenario').dataset;
    let faults = [];
    try {
      const asked = readFragment(location.hash);
      faults = live.open(asked.file === null ? name : 'linked', asked.file ?? own, asked.changes);
    } catch {
      faults = [{ line: 0, message: 'The address of this page carries settings that cannot be read.' }];
    }
    if (faults.length > 0) {
      live.open(name, own);
    }
    trouble(faults);
  }
  matchMedia('screen and (max-width: 38rem)').addEventListener('change', redraw);
  let shown = time;
  window.addEventListener('beforeprint', () => { // on paper nothing runs: nobody wants to see the start of it there
    document.documentElement.dataset.printed = '';
    shown = time;
    time = time > 0 ? time : (live.run.events.find((event) => event.kind === 'RELIEF_OPENED')?.time ?? live.run.peakTime);
    redraw();
  });
  window.addEventListener('afterprint', () => {
    delete document.documentElement.dataset.printed;
    time = shown;
    redraw();
  });
  window.addEventListener('hashchange', openAddress);
  openAddress();
  Object.assign(window, { heatswell: { engine, script, live, goTo } });
}

/* The page is painted first, which takes a frame or two; then the program in it starts. */
setTimeout(async () => {
  try {
    startPage(await unpacked(document.getElementById('engine').textContent));
  } catch (fault) {
    const box = document.getElementById('trouble');
    box.hidden = false;
    box.textContent = typeof DecompressionStream === 'undefined' ? 'This browser is too old for this page; any made since 2023 will do.' : `This page cannot start: ${fault.message}`;
    throw fault;
  }
}, 30);
