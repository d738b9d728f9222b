// Hand, slack, pull at the nose and heading on one clock: a window of some twitches, the phases over it, a cursor in it.
'use strict';
const Lanes = (() => {
  const { el, set, px, points } = Draw, ribbon = 30;

  const channels = words => [
    { name: 'hand', note: 'stroke', key: 'hand', cls: 'ink', text: v => words.brief.size(Math.max(0, v)), low: 0 },
    { name: 'slack', note: 'line to spare', key: 'slack', cls: 'slack', text: v => words.brief.size(Math.max(0, v)), low: 0 },
    { name: 'pull', note: 'at the nose', key: 'nose_pull', cls: 'tight', text: v => words.brief.pull(Math.max(0, v)), low: 0 },
    { name: 'heading', note: 'off the line of sight', key: 'heading', cls: 'ink', text: v => `${Words.degrees(v)}${Math.abs(v) < 0.02 ? '' : v > 0 ? ' right' : ' left'}` },
  ];

  // Heading is shown from pointing straight at the rod, the angler's right up.
  const read = (film, key, t) => key === 'heading' ? film.at(key, t) - Math.PI : film.at(key, t);

  function make(svg, run, W, words, options = {}) {
    const wide = W >= 620, gutter = wide ? 124 : 0, laneH = wide ? 50 : 66, pairs = twitchesFor(run, W - gutter, wide);
    const list = channels(words), top = ribbon + 8, still = Boolean(options.marks), foot = still ? 44 : 24, H = top + list.length * laneH + foot, { film, phases } = run;
    const limits = list.map(c => limit(run, c));
    Draw.open(svg, W, H);
    svg.setAttribute('aria-label', 'Hand, slack, pull at the nose and heading against time');
    const paper = el('g', {}, svg), labels = list.map((c, j) => label(svg, c, j, wide, top, laneH));
    const cursor = el('g', { class: 'cursor' }, svg);
    el('path', { d: `M0 ${ribbon}V${H - foot + 4}` }, cursor);
    el('circle', { cy: H - foot + 6, r: 9 }, cursor);
    if (still) list.forEach((c, j) => { labels[j].textContent = limits[j][0] < 0 ? `to ${Words.degrees(limits[j][1])}` : `to ${c.text(limits[j][1])}`; });
    let window = [-1, -1], active = [];

    const X = t => gutter + (W - gutter) * (t - window[0]) / (window[1] - window[0]);
    function turnTo(first) {
      const from = phases.twitches[first].from;
      window = [from, Math.min(from + pairs * run.period, Math.max(film.end, from + run.period))];
      paper.replaceChildren();
      active = ribbonOf(paper, phases.all.filter(p => p.to > window[0] && p.from < window[1]), X, window, H - foot);
      list.forEach((c, j) => curveOf(paper, run, c, limits[j], X, window, top + (j + 1) * laneH - 6, laneH - (wide ? 12 : 30), gutter, W));
      ticks(paper, X, window, H, W);
      for (const [i, m] of (options.marks ?? []).entries()) if (m >= window[0] && m <= window[1]) {
        el('path', { d: `M${px(X(m))} ${ribbon}V${H - foot}`, class: 'mark-line' }, paper);
        el('circle', { cx: px(X(m)), cy: H - foot + 10, r: 10, class: 'mark-dot' }, paper);
        el('text', { x: px(X(m)), y: H - foot + 15, 'text-anchor': 'middle', class: 'mark-text' }, paper, String(i + 1));
      }
    }

    function at(t) {
      const now = phases.twitchAt(t), odd = phases.warm % 2, first = Math.max(0, still ? now - 1 : Math.floor((now - odd) / pairs) * pairs + odd);
      if (phases.twitches[first].from !== window[0]) turnTo(first);
      if (still) return;
      set(cursor, { transform: `translate(${px(X(t))} 0)` });
      list.forEach((c, j) => { labels[j].textContent = c.text(read(film, c.key, t)); });
      for (const a of active) a.g.toggleAttribute('data-now', t >= a.from && t < a.to);
    }

    // Time under a place of the picture, in pixels of the page.
    const timeAt = (x, width) => Math.min(window[1], Math.max(window[0], window[0] + (x * W / width - gutter) / (W - gutter) * (window[1] - window[0])));
    return { at, timeAt, H };
  }

  // An even number, so that windows look alike; as many as leave room for the word over a pull.
  function twitchesFor(run, W, wide) {
    const pull = run.phases.twitches[run.phases.typical].phases[0], room = n => (pull.to - pull.from) / run.period * W / n >= 38;
    return wide && room(6) ? 6 : wide && room(4) ? 4 : 2;
  }

  function limit(run, c) {
    const [low, high] = run.film.range(c.key, run.phases.twitches[run.phases.warm].from);
    if (c.key !== 'heading') return [0, Math.max(high, 1e-3)];
    const most = Math.max(Math.abs(low - Math.PI), Math.abs(high - Math.PI), 0.2);
    return [-most, most];
  }

  function label(svg, c, j, wide, top, laneH) {
    const y = top + j * laneH;
    if (!wide) {
      const both = el('text', { x: 0, y: y + 14, class: 'halo-paper lane' }, svg);
      el('tspan', {}, both, `${c.name} `);
      return el('tspan', { class: c.cls }, both);
    }
    el('text', { x: 0, y: y + 18, class: 'lane' }, svg, c.name);
    return el('text', { x: 0, y: y + 38, class: `lane-value ${c.cls}` }, svg);
  }

  // Names of the phases along the top, a tint where the line is tight.
  function ribbonOf(paper, list, X, [from, to], bottom) {
    return list.map(p => {
      const a = X(Math.max(p.from, from)), b = X(Math.min(p.to, to)), g = el('g', { class: `phase ${p.name}` }, paper), name = p.name;
      if (name === 'pull' || name === 'tow') el('rect', { x: px(a), y: ribbon, width: px(b - a), height: bottom - ribbon, class: 'band' }, g);
      el('rect', { x: px(a + 1), y: 2, width: px(Math.max(1, b - a - 2)), height: ribbon - 4, rx: 3, class: 'tab' }, g);
      if (b - a > name.length * 8 + 2) el('text', { x: px((a + b) / 2), y: ribbon - 9.5, 'text-anchor': 'middle' }, g, name);
      return { g, from: p.from, to: p.to };
    });
  }

  function curveOf(paper, run, c, [low, high], X, [from, to], y0, tall, gutter, W) {
    const { film } = run, row = [], Y = v => y0 - tall * (Math.min(Math.max(v, low), high) - low) / (high - low);
    for (let t = from; t <= Math.min(to, film.end) + 1e-9; t += film.stepOf(c.key)) row.push([X(t), Y(read(film, c.key, t))]);
    el('path', { d: `M${gutter} ${px(Y(0))}H${W}`, class: 'base' }, paper);
    el('polyline', { points: points(row), class: `curve ${c.cls}` }, paper);
  }

  function ticks(paper, X, [from, to], H, W) {
    const step = to - from > 8 ? 2 : to - from > 4 ? 1 : 0.5;
    for (let t = Math.ceil(from / step - 1e-6) * step; t <= to + 1e-6; t += step) {
      const x = Math.min(Math.max(X(t), 16), W - 22);
      el('text', { x: px(x), y: H - 4, 'text-anchor': 'middle', class: 'soft tick' }, paper, `${Number(t.toFixed(2))} s`);
    }
  }

  return { make };
})();
