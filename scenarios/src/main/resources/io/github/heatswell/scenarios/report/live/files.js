/* In and out: scenario files, the link, the trace and the picture. */

function save(name, type, content) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/**
 * The settings as the fragment of an address; the file goes along where it is not the one this page came with.
 *
 * @param {import('./house.js').Live} live
 */
export function fragmentOf(live, own) {
  const parts = [...live.changes].map(([field, value]) => `${encodeURIComponent(field)}=${encodeURIComponent(value)}`);
  if (live.text !== own) {
    parts.unshift(`file=${encodeURIComponent(live.text)}`);
  }
  return parts.join('&');
}

/** What a fragment says: a file, and changes in their order. Whatever else it holds, the reader of files judges. */
export function readFragment(fragment) {
  const changes = new Map();
  let file = null;
  for (const part of fragment.replace(/^#/, '').split('&')) {
    const equals = part.indexOf('=');
    if (equals > 0) {
      const field = decodeURIComponent(part.slice(0, equals));
      const value = decodeURIComponent(part.slice(equals + 1));
      if (field === 'file') {
        file = value;
      } else {
        changes.set(field, value);
      }
    }
  }
  return { file, changes };
}

/** What a column of the trace is in. */
function unitOf(channel) {
  if (/^water_/u.test(channel)) {
    return 'K';
  }
  if (/absolute|reading/u.test(channel)) {
    return 'Pa';
  }
  return channel === 'heater_power' ? 'W' : channel.endsWith('_flow') ? 'm3_per_s' : 'm3';
}

function csvOf(run) {
  const { columns, regimes, count, step, end } = run.trace;
  const names = Object.keys(columns);
  const heads = names.map((name) => name.toLowerCase()).map((name) => `${name}_${unitOf(name)}`);
  const rows = [`time_s,${heads.join(',')},regime`];
  for (let i = 0; i < count; i += 1) {
    rows.push(`${i === count - 1 ? end : i * step},${names.map((name) => columns[name][i]).join(',')},${regimes[i]}`);
  }
  return `${rows.join('\n')}\n`;
}

/** The drawing as a picture of its own, in the colours of paper. */
function pictureOf(svg) {
  const copy = svg.cloneNode(true);
  const style = document.createElementNS('http://www.w3.org/2000/svg', 'style');
  const rules = document.querySelector('style').textContent;
  style.textContent = `${rules.slice(0, rules.indexOf('}') + 1)}\n${rules.slice(rules.indexOf('svg text'), rules.indexOf('.transport'))}`.replaceAll('svg text', 'text').replaceAll('svg .', '.');
  copy.prepend(style);
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('font-family', 'sans-serif');
  const [, , width, height] = copy.getAttribute('viewBox').split(' ');
  copy.setAttribute('width', width);
  copy.setAttribute('height', height);
  return new XMLSerializer().serializeToString(copy);
}

async function pixelsOf(text) {
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.width * 2;
  canvas.height = image.height * 2;
  const context = canvas.getContext('2d');
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(image.src);
  return new Promise((done) => {
    canvas.toBlob(done, 'image/png');
  });
}

/**
 * Wires the buttons below the page.
 *
 * @param {import('./house.js').Live} live
 */
export function filesOf(live, own, say, trouble) {
  const at = (id) => document.getElementById(id);
  const on = (id, work) => at(id).addEventListener('click', work);
  const name = () => live.described.name;
  on('save', () => save(`${name()}.yaml`, 'text/yaml', live.changes.size === 0 ? live.text : live.house.text()));
  on('csv', () => save(`${name()}-trace.csv`, 'text/csv', csvOf(live.run)));
  on('svg', () => save(`${name()}.svg`, 'image/svg+xml', pictureOf(at('drawing'))));
  on('png', async () => save(`${name()}.png`, 'image/png', await pixelsOf(pictureOf(at('drawing')))));
  on('print', () => window.print());
  on('reset', () => trouble(live.open(live.name, live.text)));
  on('link', async () => {
    const address = `${location.href.split('#')[0]}#${fragmentOf(live, own)}`;
    try {
      await navigator.clipboard.writeText(address);
      say('The link is copied. It opens this page as it is now.');
    } catch {
      history.replaceState(null, '', address);
      say('The address of this page now carries your changes: copy it from there.');
    }
  });
  const open = /** @type {HTMLInputElement} */ (at('open'));
  open.addEventListener('change', async () => {
    const [file] = open.files;
    if (file) {
      trouble(live.open(file.name.replace(/\.ya?ml$/i, ''), await file.text()));
      open.value = '';
    }
  });
}
