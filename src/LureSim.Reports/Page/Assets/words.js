// Values for people: SI in, text out, in the units the page was asked for. Same units and digits as the program's texts.
'use strict';
const Words = (() => {
  const inch = 0.0254, foot = 0.3048, ounce = 0.45359237 / 16 * 9.80665, gram = 9.80665e-3;
  const table = {                                       // unit, its size in SI, most decimals; a larger unit from a size on
    size: { trade: [['in', inch, 2]], metric: [['mm', 1e-3, 1], ['cm', 1e-2, 1, 1e-2]] },
    distance: { trade: [['ft', foot, 1]], metric: [['m', 1, 2]] },
    pull: { trade: [['oz', ounce, 2], ['lb', 16 * ounce, 1, 16 * ounce]], metric: [['g', gram, 1], ['kg', 1000 * gram, 1, 1000 * gram]] },
    speed: { trade: [['ft/s', foot, 1]], metric: [['m/s', 1, 2]] },
  };

  function digits(value, most) {
    const size = Math.abs(value), places = size >= 9.95 ? 0 : size >= 0.995 ? 1 : 2;
    const text = value.toFixed(Math.min(places, most));
    return Number(text) === 0 ? '0' : text;
  }

  const unitOf = (quantity, family, si) => table[quantity][family].findLast(u => !u[3] || Math.abs(si) >= u[3] * 0.995);

  function one(quantity, family, si) {
    const [name, size, most] = unitOf(quantity, family, si);
    return `${digits(si / size, most)} ${name}`;
  }

  // What rounding would lose is told by what it stays under.
  function lost(quantity, families, si) {
    const least = f => { const [, size, most] = unitOf(quantity, f, si); return size * 10 ** -most; };
    const under = Math.max(...families.map(least));
    return si !== 0 && families.some(f => one(quantity, f, si).startsWith('0 ')) ? under : 0;
  }

  function of(units) {
    const families = units === 'both' ? ['trade', 'metric'] : [units === 'metric' ? 'metric' : 'trade'];
    const text = quantity => si => {
      const under = lost(quantity, families, si), [first, second] = families.map(f => one(quantity, f, under || si));
      return `${under ? 'less than ' : ''}${second ? `${first} (${second})` : first}`;
    };
    // In a picture there is room for one unit.
    const brief = quantity => si => one(quantity, families[0], si);
    const kinds = Object.keys(table);
    return {
      ...Object.fromEntries(kinds.map(k => [k, text(k)])),
      brief: Object.fromEntries(kinds.map(k => [k, brief(k)])),
      grid: families[0] === 'trade' ? 4 * inch : 0.1,
    };
  }

  const degrees = radians => `${Math.round(Math.abs(radians) * 180 / Math.PI)}°`;
  const seconds = s => `${s.toFixed(2)} s`;
  const capital = s => s.charAt(0).toUpperCase() + s.slice(1);
  return { of, degrees, seconds, capital };
})();
