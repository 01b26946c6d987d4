/** The house on the page: the file it came from, what was changed since, and the run of it as it is now. */

/**
 * A house as the simulation holds it; `House` of the module that is compiled for this page says more.
 *
 * @typedef {'GAUGE_PRESSURE' | 'TEMPERATURE' | 'VOLUME' | 'POWER'} Shown kinds of quantities that have an axis or a control
 * @typedef {Shown | 'TIME' | 'FLOW' | 'LENGTH'} Kind kinds of quantities
 * @typedef {object} House
 * @property {(fields: string[], values: string[]) => { house?: House, faults?: Fault[] }} with
 * @property {() => any} described
 * @property {() => any} run
 * @property {(volume: number) => { peak?: number, precharge?: number, drips?: boolean, higher?: boolean, refused?: string }} sized
 * @property {(answers: number[]) => any} band
 * @property {(text: string) => { pressure?: number, hazard?: string, wrong?: string }} reading
 * @property {(kinds: string[], above: number[]) => string} offSheet
 * @property {() => string} text
 * @property {(kind: Kind, si: number) => string} said
 * @property {(kind: Shown, si: number) => number} number
 * @property {(kind: Shown) => string} unit
 * @property {(kind: Shown) => string} symbol
 * @property {(words: string) => string} spelled
 * @property {(minutes: number) => string} clock
 *
 * @typedef {{ line: number, column: number, message: string }} Fault
 *
 * @typedef {object} Live the house on the page
 * @property {string} name
 * @property {string} text the file it came from
 * @property {Map<string, string>} changes
 * @property {House} base the house of the file
 * @property {House} house the house as it is now
 * @property {any} described
 * @property {any} run
 * @property {any} before the run of the file
 * @property {any} own the house of the file, described
 * @property {(name: string, text: string, changes?: Map<string, string>) => Fault[]} open
 * @property {(some: Map<string, string | null>, quietly?: boolean) => Fault[]} change
 * @property {(kind: Kind, si: number) => string} said
 */

/** What a run shows at a time: every channel, between its samples along straight lines. */
export function momentOf(run, time) {
  const { step, end, count, columns, regimes } = run.trace;
  const last = count - 1;
  const place = Math.min(last, Math.max(0, time / step));
  const before = Math.min(last, Math.floor(place));
  const after = Math.min(last, before + 1);
  const from = before === last ? end : before * step;
  const to = after === last ? end : after * step;
  const share = to > from ? Math.min(1, Math.max(0, (time - from) / (to - from))) : 0;
  const moment = { time, regime: regimes[before] };
  for (const [name, values] of Object.entries(columns)) {
    moment[name] = values[before] + share * (values[after] - values[before]);
  }
  // between samples a valve may open: at its event the pressure is that of the event
  const event = run.events.find((one) => Math.abs(one.time - time) < 1e-6);
  if (event) {
    const rise = event.pressure + run.trace.atmosphere - moment.PRESSURE_ABSOLUTE;
    moment.PRESSURE_ABSOLUTE += rise;
    moment.GAUGE_READING += rise;
  }
  return moment;
}

/** Events worth stopping at: the first of each kind at each device, and whatever ends a run. */
export function stopsOf(run) {
  const seen = new Set();
  return run.events.filter((event) => {
    const one = `${event.kind} ${event.device}`;
    const fresh = !seen.has(one) || event.endsRun;
    seen.add(one);
    return fresh;
  });
}

/** A house and its changes; `told` hears of every new run. */
export function liveHouse(engine, told) {
  const live = /** @type {Live} */ ({ name: '', text: '', changes: new Map(), base: null, house: null, described: null, run: null, before: null, own: null });

  function take(house) {
    const run = house.run();
    live.house = house;
    live.described = house.described();
    live.run = run;
  }

  /** Opens a file; returns its faults, none if it could be read. */
  live.open = (name, text, changes = new Map()) => {
    const opened = engine.open(name, text);
    if (opened.faults) {
      return opened.faults;
    }
    const old = { ...live };
    Object.assign(live, { name, text, base: opened.house, changes: new Map() });
    take(opened.house);
    live.before = live.run;
    live.own = live.described;
    const faults = changes.size > 0 ? live.change(changes, true) : [];
    if (faults.length > 0 && old.house) {
      Object.assign(live, old);
      return faults;
    }
    told();
    return faults;
  };

  /** Changes fields; a value of null takes a change back. Returns what is wrong with them: then nothing changes. */
  live.change = (some, quietly = false) => {
    const changes = new Map(live.changes);
    for (const [field, value] of some) {
      changes.delete(field);
      if (value !== null) {
        changes.set(field, value);
      }
    }
    const outcome = live.base.with([...changes.keys()], [...changes.values()]);
    if (outcome.faults) {
      return outcome.faults;
    }
    take(outcome.house);
    live.changes = changes;
    if (!quietly) {
      told();
    }
    return [];
  };

  live.said = (kind, value) => live.house.said(kind, value);
  return live;
}
