(() => {
  'use strict';
  const root = document.documentElement;
  const find = id => document.getElementById(id);
  const repaint = [];

  // The units to show: both, or one of them. Links carry the choice to the other pages; nothing is stored.
  const units = () => root.dataset.units || 'both';
  const choice = find('units');
  const choose = value => {
    root.dataset.units = value;
    for (const other of document.querySelectorAll('details.other')) {
      other.open = other.classList.contains(value);
    }
    for (const link of document.querySelectorAll('a[href*=".html"]')) {
      const page = link.getAttribute('href').split('?')[0];
      link.setAttribute('href', value === 'both' ? page : page + '?units=' + value);
    }
    repaint.forEach(paint => paint());
  };
  const wanted = new URLSearchParams(location.search).get('units');
  if (choice) {
    choice.hidden = false;
    choice.addEventListener('change', event => choose(event.target.value));
  }
  if (wanted === 'si' || wanted === 'us') {
    if (choice) choice.querySelector('[value="' + wanted + '"]').checked = true;
    choose(wanted);
  }

  // The rest unfolds once something was predicted, and answers that guess.
  const look = find('look');
  const verdict = find('verdict');
  const options = [...document.querySelectorAll('input[name="prediction"]')];
  const chosen = () => options.findIndex(option => option.checked);
  const judge = () => {
    const guess = chosen();
    if (guess < 0 || !look.open) return;
    if (guess === Number(verdict.dataset.outcome)) {
      verdict.textContent = 'Right. That is what the run shows.';
      return;
    }
    const reply = document.querySelector('#replies [data-option="' + guess + '"] dd');
    verdict.replaceChildren('You predicted: \u201c' + options[guess].parentElement.textContent.trim() + '\u201d ');
    if (reply) verdict.append(...[...reply.childNodes].map(node => node.cloneNode(true)));
  };
  if (look && verdict) {
    find('replies').hidden = true;
    look.querySelector('summary').addEventListener('click', event => {
      if (look.open || chosen() >= 0) return;
      event.preventDefault();
      verdict.textContent = 'Choose an answer first.';
      options[0].focus();
    });
    look.addEventListener('toggle', () => {
      judge();
      if (!look.open || chosen() < 0) return;
      verdict.scrollIntoView();
      // The picture is to be seen whole, where a screen has room for it.
      const { top, bottom } = look.querySelector('.stage figure').getBoundingClientRect();
      window.scrollBy(0, Math.min(Math.max(0, bottom - window.innerHeight), Math.max(0, top)));
    });
    for (const option of options) {
      option.addEventListener('change', () => { if (look.open) judge(); else verdict.textContent = ''; });
    }
  }

  // On paper all is unfolded but the picture in the other units and the scenario file.
  let folded = [];
  window.addEventListener('beforeprint', () => {
    folded = [...document.querySelectorAll('main details:not(.other, .file):not([open])')];
    folded.forEach(part => { part.open = true; });
  });
  window.addEventListener('afterprint', () => { folded.forEach(part => { part.open = false; }); });

  for (const button of document.querySelectorAll('button[data-copy]')) {
    button.hidden = false;
    button.addEventListener('click', () => {
      const range = document.createRange();
      range.selectNodeContents(find(button.dataset.copy));
      const selection = window.getSelection();
      selection.removeAllRanges();
      selection.addRange(range);
      let copied = false;
      try { copied = document.execCommand('copy'); } catch (e) { copied = false; }
      button.textContent = copied ? 'Copied' : 'Selected: press Ctrl and C';
    });
  }

  // The slider: runs made beforehand; between two of them both are drawn, for an event is in neither's middle.
  const data = find('runs') && JSON.parse(find('runs').dataset.runs);
  if (!data) return;
  const slider = find('slider');
  const place = find('trace');
  const runs = data.runs;
  const PSI = 0.14503773773;
  const GALLON = 3785.411784;
  // As everywhere: without the noise of binary numbers, then half up.
  const exact = value => Number(value.toPrecision(12));
  const trimmed = (value, digits) => String(Math.floor(exact(value * 10 ** digits) + 0.5) / 10 ** digits);
  // Three digits that count, and at most two decimals.
  const litres = value => trimmed(value, value < 9.995 ? 2 : value < 99.95 ? 1 : 0);
  const both = (si, us) => {
    if (units() === 'si' || si === us) return si;
    if (units() === 'us') return us;
    return data.first === 'si' ? si + ' (' + us + ')' : us + ' (' + si + ')';
  };
  const range = (low, high, name) => (low === high ? low : low + ' to ' + high) + '\u00a0' + name;
  const inPsi = value => trimmed(value * PSI, value * PSI < 19.95 ? 1 : 0);
  const pressure = (low, high) => both(
    range(trimmed(low / 100, 2), trimmed(high / 100, 2), 'bar'),
    range(inPsi(low), inPsi(high), 'psi'));
  const volume = (low, high) => both(
    range(litres(low / 1000), litres(high / 1000), 'L'),
    range(litres(low / GALLON), litres(high / GALLON), 'gal'));
  const time = seconds => {
    const pair = (small, per, large, unit) =>
      Math.floor(small / per) + ' ' + large + (small % per ? ' ' + small % per + ' ' + unit : '');
    if (seconds < 60) return seconds + ' s';
    if (seconds < 3600) return pair(seconds, 60, 'min', 's');
    const minutes = Math.round(seconds / 60);
    return minutes < 2880 ? pair(minutes, 60, 'h', 'min') : pair(Math.round(seconds / 3600), 24, 'd', 'h');
  };

  const state = () => {
    const low = runs[Math.floor(Number(slider.value))];
    const high = runs[Math.ceil(Number(slider.value))];
    return { low, high, exact: low === high, shown: low === high ? [low] : [low, high] };
  };
  const named = run => both(run.si, run.us);
  const title = now => now.exact
    ? 'Computed run: ' + named(now.low)
    : 'Between the runs of ' + named(now.low) + ' and ' + named(now.high);
  const ordered = (a, b) => [Math.min(a, b), Math.max(a, b)];
  const peak = now => pressure(...ordered(now.low.peak, now.high.peak));
  const opening = now => {
    const seen = [now.low, now.high].filter(run => run.opens >= 0);
    if (seen.length === 0) return 'stays shut';
    if (now.exact) return 'opens after ' + time(now.low.opens);
    if (seen.length === 1) {
      return 'opens with ' + data.with + ' ' + named(seen[0]) + '; stays shut with ' + named(seen[0] === now.low ? now.high : now.low);
    }
    const [early, late] = ordered(now.low.opens, now.high.opens).map(time);
    return early === late ? 'opens after ' + early : 'opens between ' + early + ' and ' + late + ' after the start';
  };
  const given = now => now.low.out === 0 && now.high.out === 0
    ? 'nothing'
    : volume(...ordered(now.low.out, now.high.out));

  const all = runs.flatMap(run => run.p.concat(run.peak)).concat(data.set > 0 ? [data.set] : []);
  const lowest = Math.max(0, Math.floor(Math.min(...all) / 100) * 100 - 50);
  const highest = Math.ceil((Math.max(...all) + 30) / 100) * 100;

  const create = (name, attributes, parent, text) => {
    const element = document.createElementNS('http://www.w3.org/2000/svg', name);
    for (const key of Object.keys(attributes)) element.setAttribute(key, attributes[key]);
    if (text !== undefined) element.textContent = text;
    parent.appendChild(element);
    return element;
  };
  // The samples, and the peak where it lies between two of them.
  const line = run => {
    const points = run.p.map((value, i) => [i, value]);
    const at = run.at / data.sample;
    if (at > Math.floor(at) && at < run.p.length) points.splice(Math.ceil(at), 0, [Number(at.toFixed(3)), Math.round(run.peak)]);
    return points.map(([i, value], n) => (n ? 'L' : 'M') + i + ' ' + value).join('');
  };
  const steps = [60, 300, 600, 900, 1800, 3600, 7200, 10800, 21600, 43200, 86400, 172800, 604800];

  const paint = () => {
    const now = state();
    const width = Math.max(280, place.clientWidth || 640);
    // The letters grow with those of the page, and so does the room for them.
    const em = parseFloat(getComputedStyle(root).fontSize) / 17;
    const tall = Math.round(Math.min(420 * em, Math.max(250, Math.min(width * 0.5, window.innerHeight * 0.42))));
    const dual = units() === 'both';
    const left = 44 * em;
    const right = dual ? 48 * em : 14;
    const top = 26 * em;
    const bottom = 40 * em;
    const x = seconds => left + seconds / data.end * (width - left - right);
    const y = kpa => tall - bottom - (kpa - lowest) / (highest - lowest) * (tall - top - bottom);
    const unit = x(data.sample) - x(0);
    const scale = y(1) - y(0);
    const picture = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    picture.setAttribute('viewBox', '0 0 ' + width + ' ' + tall);
    picture.setAttribute('role', 'img');
    picture.setAttribute('aria-label', 'Gauge pressure over time. ' + title(now) + '. Highest pressure ' + peak(now)
      + '. The relief valve ' + opening(now) + '.');

    const axis = (name, perKpa, step, at, anchor) => {
      const from = Math.ceil(lowest * perKpa / step) * step;
      for (let value = from; value <= highest * perKpa; value += step) {
        const level = y(value / perKpa);
        if (at === left) create('line', { class: 'grid', x1: left, x2: width - right, y1: level, y2: level }, picture);
        create('text', { x: at === left ? left - 6 : width - right + 6, y: level + 4 * em, 'text-anchor': anchor }, picture, value);
      }
      create('text', { x: at === left ? 4 : width - 4, y: 14 * em, 'text-anchor': at === left ? 'start' : 'end' }, picture, name);
    };
    const psi = (highest - lowest) * PSI > 90 ? 20 : 10;
    const first = units() === 'both' ? data.first : units();
    const bars = at => axis('bar', 0.01, highest - lowest > 800 ? 2 : 1, at, at === left ? 'end' : 'start');
    const psis = at => axis('psi', PSI, psi, at, at === left ? 'end' : 'start');
    (first === 'si' ? bars : psis)(left);
    if (dual) (first === 'si' ? psis : bars)(width - right);

    const step = steps.find(one => data.end / one <= width / (90 * em)) || data.end;
    for (let at = 0; at <= data.end; at += step) {
      create('line', { class: 'grid', x1: x(at), x2: x(at), y1: top, y2: tall - bottom }, picture);
      create('text', { x: x(at), y: tall - bottom + 18 * em, 'text-anchor': 'middle' }, picture, at === 0 ? '0' : time(at));
    }
    create('text', { x: (left + width - right) / 2, y: tall - 4, 'text-anchor': 'middle' }, picture, 'time since the start');

    const group = create('g', { transform: 'matrix(' + [unit, 0, 0, scale, left, y(0)].join(' ') + ')' }, picture);
    const traced = { 'vector-effect': 'non-scaling-stroke' };
    create('path', { ...traced, class: 'own', d: line(runs[data.own]) }, group);
    if (data.set > 0) {
      create('line', { class: 'set', x1: left, x2: width - right, y1: y(data.set), y2: y(data.set) }, picture);
      create('text', { x: width - right - 4, y: y(data.set) - 6, 'text-anchor': 'end' }, picture,
        width < 420 ? 'relief valve set' : 'relief valve set to ' + pressure(data.set, data.set));
    }
    for (const run of now.shown) {
      create('path', { ...traced, class: now.exact ? 'run' : 'run beside', d: line(run) }, group);
      create('circle', { class: 'peak', r: 5, cx: x(run.at), cy: y(run.peak) }, picture);
      if (run.opens >= 0) {
        const px = x(run.opens);
        const py = y(data.set);
        create('path', { class: 'opens', d: 'M' + (px - 7) + ' ' + (py - 14) + 'h14L' + px + ' ' + py + 'z' }, picture);
      }
    }
    place.replaceChildren(picture);

    find('first').textContent = named(runs[0]);
    find('last').textContent = named(runs[runs.length - 1]);
    find('shown').textContent = title(now);
    find('read-peak').textContent = peak(now) + (now.exact ? ', after ' + time(now.low.at) : '');
    find('read-opens').textContent = opening(now);
    find('read-relieved').textContent = given(now);
    slider.setAttribute('aria-valuetext', title(now) + ', highest pressure ' + peak(now) + ', relief valve ' + opening(now));
  };
  repaint.push(paint);
  find('explore').hidden = false;
  slider.addEventListener('input', paint);
  window.addEventListener('resize', paint);
  if (look) look.addEventListener('toggle', paint);
  paint();
})();
