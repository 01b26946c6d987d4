/** Pieces of pictures. */

const SVG = 'http://www.w3.org/2000/svg';

/** An element of a picture, with attributes and what is in it. */
export function shape(name, attributes = {}, ...inside) {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) {
    element.setAttribute(key, typeof value === 'number' ? String(Math.round(value * 100) / 100) : value);
  }
  element.append(...inside);
  return element;
}

/** A text in a picture. */
export function label(x, y, text, attributes = {}) {
  return shape('text', { x, y, ...attributes }, text);
}

export function line(x1, y1, x2, y2, kind) {
  return shape('line', { x1, y1, x2, y2, class: kind });
}

export function path(d, kind) {
  return shape('path', { d, class: kind });
}

/** An element of the page. */
export function element(name, attributes = {}, ...inside) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    made.setAttribute(key, value);
  }
  made.append(...inside);
  return made;
}

const isPrinted = () => 'printed' in document.documentElement.dataset;
/** Whether pictures are drawn for a phone; on paper never. */
export const isNarrow = () => !isPrinted() && matchMedia('screen and (max-width: 38rem)').matches;

/**
 * Words beside a level line of a picture: at the first of its ends, above or below it, where they lie over nothing that is drawn.
 *
 * @param {{ left: number, right: number, y: number, words: string, kind: string }} level
 * @param {number[][]} drawn points that are to stay in sight; those of the words are added
 */
export function beside({ left, right, y, words, kind }, drawn) {
  const letter = isPrinted() ? 10 : isNarrow() ? 8.2 : 7;
  const width = words.length * letter;
  /** @type {[number, number][]} */
  const places = [[right - width, y - 6], [left + 4, y - 6], [right - width, y + 2 * letter], [left + 4, y + 2 * letter]];
  const hidden = ([x, at]) => drawn.filter((one) => one[0] > x - 4 && one[0] < x + width + 4 && one[1] > at - 2 * letter && one[1] < at + 4).length;
  const best = places.reduce((least, one) => (hidden(one) < hidden(least) ? one : least));
  for (let x = best[0]; x <= best[0] + width; x += letter) {
    drawn.push([x, best[1] - letter], [x, best[1]]);
  }
  const end = best[0] > left + 4;
  return label(end ? right : best[0], best[1], words, { class: `small name ${kind} halo`, 'text-anchor': end ? 'end' : 'start' });
}

/** Round steps of an axis: about `wanted` of them up to `most`. */
export function ticks(least, most, wanted) {
  const rough = (most - least) / wanted;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * ten).find((one) => one >= rough);
  const marks = [];
  for (let i = Math.ceil(least / step - 1e-9); i * step <= most + 1e-9 * step; i += 1) {
    marks.push(Number((i * step).toPrecision(12)));
  }
  return marks;
}

/**
 * From SI to the units of the house and back, for one kind of quantity.
 *
 * @param {import('./house.js').House} house
 * @param {import('./house.js').Shown} kind
 */
export function scaleOf(house, kind) {
  const zero = house.number(kind, 0);
  const factor = (house.number(kind, 1e5) - zero) / 1e5;
  return {
    unit: house.unit(kind),
    symbol: house.symbol(kind),
    shown: (si) => zero + factor * si,
    si: (shown) => (shown - zero) / factor,
  };
}

/** What somebody typed for a quantity: a decimal comma, as the keys of a phone have it, is a point, "about" and "or so" add nothing, and a bare number is in the unit shown. */
export function withUnit(typed, unit) {
  const text = typed.trim().replace(/^(?:about|around|approx\.?|ca\.?|~)\s*|-?ish\b|\s*(?:or so|\?)$/giu, '').replace(/^(\d+),(\d{1,2})(?!\d)/, '$1.$2');
  return /^-?[\d.]+$/.test(text) ? `${text} ${unit}` : text;
}
