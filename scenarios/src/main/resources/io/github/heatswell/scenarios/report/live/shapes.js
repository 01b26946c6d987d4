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

/** What somebody typed for a quantity: a decimal comma, as the keys of a phone have it, is a point, "about" adds nothing, and a bare number is in the unit shown. */
export function withUnit(typed, unit) {
  const text = typed.trim().replace(/^(?:about|approx\.?|ca\.?|~)\s*/iu, '').replace(/^(\d+),(\d{1,2})(?!\d)/, '$1.$2');
  return /^-?[\d.]+$/.test(text) ? `${text} ${unit}` : text;
}
