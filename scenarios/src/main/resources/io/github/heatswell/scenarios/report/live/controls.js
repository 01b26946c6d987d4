import { element, scaleOf, withUnit } from './shapes.js';

/**
 * What can be changed by a number: its field, its range in either unit system, and what it is now.
 *
 * @type {{ field: string, label: string, kind: import('./house.js').Shown, si: number[], us: number[], of: (described: any, own: any) => number | undefined }[]}
 */
const NUMBERS = [
  { field: 'vessel.volume', label: 'Vessel size', kind: 'VOLUME', si: [2, 60, 0.5], us: [1, 20, 0.5], of: (d) => d.vessels[0]?.volume },
  { field: 'vessel.precharge', label: 'Precharge', kind: 'GAUGE_PRESSURE', si: [0.5, 8, 0.1], us: [10, 115, 1], of: (d) => d.vessels[0]?.precharge },
  { field: 'supply.pressure', label: 'Mains pressure', kind: 'GAUGE_PRESSURE', si: [0.5, 10, 0.1], us: [10, 145, 1], of: (d) => (d.supply.constant ? d.supply.mains : undefined) },
  ...['day', 'night'].map((part) => ({ field: `supply.pressure.${part}`, label: part === 'day' ? 'Mains pressure by day' : 'Mains pressure at night', kind: /** @type {'GAUGE_PRESSURE'} */ ('GAUGE_PRESSURE'), si: [0.5, 10, 0.1], us: [10, 145, 1], of: (d, own) => d.supply.timetable[dayAndNight(own)?.[part][0]]?.pressure })),
  { field: 'supply.reducing-valve.set', label: 'Reducing valve set to', kind: 'GAUGE_PRESSURE', si: [1, 7, 0.1], us: [15, 100, 1], of: (d) => d.supply.set },
  { field: 'relief[0].opens', label: 'Relief valve opens at', kind: 'GAUGE_PRESSURE', si: [1, 10, 0.1], us: [30, 150, 1], of: (d) => d.relief[0]?.opens },
  { field: 'heater.set-point', label: 'Thermostat set to', kind: 'TEMPERATURE', si: [40, 90, 1], us: [105, 195, 1], of: (d) => d.heater.setPoint },
  { field: 'heater.input', label: 'Heater power', kind: 'POWER', si: [0.5, 30, 0.1], us: [2000, 100_000, 500], of: (d) => d.heater.input },
  { field: 'tank.volume', label: 'Tank', kind: 'VOLUME', si: [50, 500, 5], us: [10, 120, 1], of: (d) => d.tank.volume },
];

const CHOICES = [
  { field: 'supply.arrangement', label: 'Cold feed', options: { direct: 'open to the mains', 'check-valve': 'check valve', 'reducing-valve': 'reducing valve' } },
  { field: 'supply.reducing-valve.bypass-opens', label: 'Bypass of the reducing valve', options: { none: 'none', open: 'opens above the mains' } },
  { field: 'heater.energy', label: 'Heated by', options: { electric: 'electricity', gas: 'gas' } },
  { field: 'tank.material', label: 'Tank made of', options: { steel: 'steel', 'stainless-steel': 'stainless steel', copper: 'copper' } },
  { field: 'vessel', label: 'Expansion vessel', options: { none: 'none', sound: 'sound', isolated: 'isolating valve shut', waterlogged: 'diaphragm failed' } },
];

/** Which entries of a mains timetable of two pressures are those of the day and of the night, which holds at three o'clock; null of another. */
function dayAndNight({ supply: { timetable } }) {
  const pressures = new Set(timetable.map((one) => one.pressure));
  if (pressures.size !== 2) {
    return null;
  }
  const away = (one) => Math.min(Math.abs(one.at - 10_800), 86_400 - Math.abs(one.at - 10_800));
  const night = timetable.reduce((least, one) => (away(one) < away(least) ? one : least)).pressure;
  const places = [...timetable.keys()];
  return { day: places.filter((i) => timetable[i].pressure !== night), night: places.filter((i) => timetable[i].pressure === night) };
}

/**
 * The numbers of a house as it is: range, step and value in its units.
 *
 * @param {import('./house.js').Live} live
 */
export function numbersOf(live) {
  return NUMBERS.flatMap((one) => {
    const si = one.of(live.described, live.own);
    if (si === undefined) {
      return [];
    }
    const scale = scaleOf(live.house, one.kind);
    const [least, most, step] = (live.described.us ? one.us : one.si).map((number) => (one.kind === 'GAUGE_PRESSURE' && scale.unit === 'kPa' ? 100 * number : number));
    const value = Number(scale.shown(si).toFixed(4));
    return [{ ...one, scale, step, value, least: Math.min(least, value), most: Math.max(most, Math.ceil(value * 1.2)), said: live.said(one.kind, si) }];
  });
}

/** The text a file has for a number. */
export function written(number, shown) {
  const places = number.step < 1 ? 1 : 0;
  return `${Number(shown.toFixed(places))} ${number.scale.unit}`;
}

/**
 * The changes that set a number by a text: a relief valve's pressures keep their proportions, as with a stronger or weaker spring.
 *
 * @param {import('./house.js').Live} live
 */
export function changesOf(live, number, text) {
  const part = number.field.replace(/^supply\.pressure\./u, '');
  if (part === 'day' || part === 'night') {
    const { scale } = number;
    const changed = dayAndNight(live.own)[part];
    const two = (value) => String(Math.floor(value)).padStart(2, '0');
    const entries = live.described.supply.timetable.map(({ at, pressure }, i) => `{ at: '${two(at / 3600)}:${two((at / 60) % 60)}', pressure: ${changed.includes(i) ? text : `${Number(scale.shown(pressure).toFixed(3))} ${scale.unit}`} }`);
    return new Map([['supply.pressure', `[${entries.join(', ')}]`]]);
  }
  const changes = new Map([[number.field, text]]);
  const [valve] = live.described.relief;
  const spring = number.field === 'relief[0].opens' ? Number.parseFloat(text) / number.scale.shown(valve.opens) : NaN;
  if (spring > 0 && text.endsWith(number.scale.unit)) {
    for (const [key, si] of [['reseats', valve.reseats], ['full-lift', valve.fullLift]]) {
      changes.set(`relief[0].${key}`, `${Number((spring * number.scale.shown(si)).toFixed(4))} ${number.scale.unit}`);
    }
  }
  return changes;
}

/** @param {import('./house.js').Live} live */
function chosen(live, choice) {
  const { vessels, supply, tank } = live.described;
  switch (choice.field) {
    case 'vessel': return vessels.length === 0 ? 'none' : vessels[0].condition;
    case 'tank.material': return tank.material;
    case 'supply.arrangement': return supply.arrangement;
    case 'heater.energy': return live.described.heater.energy;
    default: return supply.bypass === undefined ? 'none' : 'open';
  }
}

/**
 * The changes that make a choice, with what must come or go along.
 *
 * @param {import('./house.js').Live} live
 */
export function changesFor(live, field, value) {
  const { described, base, house } = live;
  const pressure = (si) => `${Number(scaleOf(house, 'GAUGE_PRESSURE').shown(si).toFixed(1))} ${house.unit('GAUGE_PRESSURE')}`;
  const changes = new Map();
  if (field === 'supply.arrangement') {
    changes.set(field, value);
    if (value === 'reducing-valve') {
      changes.set('supply.reducing-valve', null);
      changes.set('supply.reducing-valve.set', pressure(Math.min(described.supply.mains, 3.5e5)));
    } else if (described.supply.set !== undefined) {
      changes.set('supply.reducing-valve.set', null);
      changes.set('supply.reducing-valve.bypass-opens', null);
      changes.set('supply.reducing-valve', base.described().supply.set === undefined ? null : 'none');
    }
    return changes;
  }
  if (field === 'supply.reducing-valve.bypass-opens') {
    changes.set(field, value === 'none' ? value : described.us ? '3 psi' : '0.2 bar');
    return changes;
  }
  if (field === 'tank.material' || field === 'heater.energy') {
    changes.set(field, value);
    if (field === 'heater.energy') { // the efficiency of the file is that of its own heater
      changes.set('heater.recovery-efficiency', value === base.described().heater.energy ? null : 'none');
    }
    return changes;
  }
  const had = base.described().vessels.length > 0;
  if (value === 'none') {
    for (const key of live.changes.keys()) {
      if (key.startsWith('vessel.')) {
        changes.set(key, null);
      }
    }
    changes.set('vessel', had ? 'none' : null);
    return changes;
  }
  changes.set('vessel', null);
  changes.set('vessel.condition', value);
  if (described.vessels.length === 0 && !had) {
    changes.set('vessel.volume', described.us ? '2 gal' : '8 L');
    changes.set('vessel.precharge', pressure(described.supply.pressure));
  }
  return changes;
}

/** What keeps water from flowing back in the words of the file: a backflow preventer does it as a check valve does. */
export const checkValve = (live) => (/\barrangement:\s*['"]?backflow-preventer/u.test(live.text) ? 'backflow preventer' : 'check valve');

/** Words that a choice may have beyond those offered, such as a condition that only files set. */
function optionsOf(live, choice, value) {
  if (choice.options['check-valve'] !== undefined) {
    return Object.entries({ ...choice.options, 'check-valve': checkValve(live) });
  }
  return Object.entries(choice.options[value] === undefined ? { ...choice.options, [value]: value.replaceAll('-', ' ') } : choice.options);
}

/**
 * What a value is called; of several vessels it is the first that is changed.
 *
 * @param {import('./house.js').Live} live
 */
function labelOf(live, { field, label }) {
  const [first, ...others] = live.described.vessels;
  const which = !field.startsWith('vessel') || others.length === 0 ? '' : ` (${first.name ? `“${first.name}”` : 'the first'})`;
  return live.house.spelled(label) + which;
}

/**
 * What was changed, as it is now; empty if nothing was.
 *
 * @param {import('./house.js').Live} live
 */
export function changedOf(live) {
  const fields = [...live.changes.keys()];
  const isChanged = (name) => fields.some((field) => field === name || (field !== 'vessel' && name.startsWith(`${field}.`)) || (name === 'vessel' && field === 'vessel.condition'));
  const chosenNow = (one) => optionsOf(live, one, chosen(live, one)).find(([value]) => value === chosen(live, one))[1];
  return [
    ...CHOICES.filter((one) => isChanged(one.field)).map((one) => `${labelOf(live, one)}: ${live.house.spelled(chosenNow(one))}`),
    ...numbersOf(live).filter((one) => isChanged(one.field)).map((one) => `${labelOf(live, one)} ${one.said}`),
    ...(live.changes.has('draws') ? ['a tap is opened'] : []),
  ].join('; ');
}

/** A message that names what stands in the form as the form does, not by the key of a file. */
function inWords(message) {
  const known = [...NUMBERS, ...CHOICES].find((one) => message.startsWith(`${one.field}: `));
  return known ? known.label + message.slice(known.field.length) : message;
}

function wrong(row, faults) {
  row.querySelector('.wrong')?.remove();
  const input = row.querySelector('input[type="text"]');
  input?.setAttribute('aria-invalid', String(faults.length > 0));
  if (faults.length > 0) {
    row.append(element('p', { class: 'wrong', role: 'alert' }, inWords(faults[0].message)));
  }
}

/**
 * The form beside the drawing: it is built anew where other things can be set, else only its values change.
 *
 * @param {import('./house.js').Live} live
 */
export function controlsOf(form, live, tap) {
  let shown = '';
  let rows = new Map();

  function numberRow(number) {
    const id = `set-${number.field}`;
    const typed = element('input', { type: 'text', id, autocomplete: 'off', spellcheck: 'false' });
    const words = labelOf(live, number);
    const slid = element('input', { type: 'range', 'aria-label': words });
    const row = element('div', { class: 'control' }, element('label', { for: id }, words), typed, slid);
    const change = (text) => wrong(row, live.change(changesOf(live, number, text)));
    slid.addEventListener('input', () => change(written(number, Number(slid.value))));
    typed.addEventListener('change', () => {
      change(withUnit(typed.value, number.scale.unit));
    });
    typed.addEventListener('keydown', (event) => {
      const steps = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
      if (steps !== undefined) {
        event.preventDefault();
        const now = numbersOf(live).find((one) => one.field === number.field);
        change(written(now, Math.min(now.most, Math.max(now.least, now.value + steps * now.step))));
      }
    });
    return { row, show: (now) => {
      Object.assign(slid, { min: now.least, max: now.most, step: now.step, value: now.value });
      slid.setAttribute('aria-valuetext', now.said);
      if (document.activeElement !== typed || typed.getAttribute('aria-invalid') !== 'true') {
        typed.value = now.said;
        wrong(row, []);
      }
    } };
  }

  function choiceRow(choice) {
    const id = `set-${choice.field}`;
    const select = element('select', { id });
    const row = element('div', { class: 'control' }, element('label', { for: id }, labelOf(live, choice)), select);
    select.addEventListener('change', () => wrong(row, live.change(changesFor(live, choice.field, select.value))));
    return { row, show: (value) => {
      if (select.value !== value) {
        select.replaceChildren(...optionsOf(live, choice, value).map(([word, said]) => element('option', { value: word }, live.house.spelled(said))));
        select.value = value;
      }
      wrong(row, []);
    } };
  }

  function tapRow() {
    const button = element('button', { type: 'button', id: 'tap' });
    button.addEventListener('click', tap.toggle);
    const row = element('p', { class: 'transport' }, button);
    return { row, show: () => {
      row.hidden = !tap.isOffered();
      button.textContent = live.house.spelled(tap.isOpened() ? 'Leave the tap shut' : 'Open a tap at this time');
    } };
  }

  /** Lets the vessel lose its precharge step by step, as in years, until the relief valve opens or nothing is left. */
  function fadeRow() {
    const button = element('button', { type: 'button', id: 'fade' });
    let timer = 0;
    const stop = () => {
      clearInterval(timer);
      timer = 0;
    };
    button.addEventListener('click', () => {
      if (timer) {
        stop();
      } else {
        const dripped = live.run.discharged > 0;
        const step = () => {
          const now = numbersOf(live).find((one) => one.field === 'vessel.precharge');
          const less = now && now.value - now.step;
          if (!now || less < now.least || live.change(new Map([[now.field, written(now, less)]])).length > 0 || (!dripped && live.run.discharged > 0)) {
            stop();
            show();
          }
        };
        timer = setInterval(step, 150);
        step();
      }
      show();
    });
    return { row: element('p', { class: 'transport' }, button), show: () => {
      button.parentNode.hidden = live.described.vessels[0]?.condition !== 'sound';
      button.textContent = timer ? 'Stop' : live.house.spelled('Let the precharge fall');
    } };
  }

  /** The changes of the house, and where it has no vessel, those that fit one: a map asks which it should be. */
  function fitted() {
    const changes = new Map(live.changes);
    if (live.described.vessels.length === 0) {
      changesFor(live, 'vessel', 'sound').forEach((value, field) => (value === null ? changes.delete(field) : changes.set(field, value)));
    }
    return changes;
  }

  function show() {
    const numbers = numbersOf(live);
    const choices = CHOICES.filter((one) => chosen(live, one) !== undefined && (one.options.open === undefined || live.described.supply.set !== undefined));
    const kind = `${live.described.us} ${[...choices, ...numbers].map((one) => one.field + labelOf(live, one)).join()}`;
    if (kind !== shown) {
      shown = kind;
      rows = new Map();
      choices.forEach((one) => rows.set(one.field, choiceRow(one)));
      numbers.forEach((one) => rows.set(one.field, numberRow(one)));
      rows.set('fade', fadeRow()).set('tap', tapRow());
      const focused = document.activeElement?.id;
      form.replaceChildren(element('h2', {}, 'Try it'), element('p', { class: 'quiet' }, 'Here, or at the handles with arrows in the drawing.'), ...[...rows.values()].map((one) => one.row));
      if (focused?.startsWith('set-')) {
        document.getElementById(focused)?.focus();
      }
    }
    choices.forEach((one) => rows.get(one.field).show(chosen(live, one)));
    numbers.forEach((one) => rows.get(one.field).show(one));
    rows.get('fade').show();
    rows.get('tap').show();
  }
  return { show, fitted };
}
