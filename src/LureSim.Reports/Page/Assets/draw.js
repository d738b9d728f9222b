// The pictures: the lure from above beside the rod tip, the whole line from the side, the lure from its own side and from ahead.
// Each is made once for a width and then follows the clock; it never writes markup from text of the data.
'use strict';
const Draw = (() => {
  let made = 0;
  const px = n => n.toFixed(1), points = list => list.map(p => `${px(p[0])},${px(p[1])}`).join(' ');

  function el(name, attributes, parent, text) {
    const e = document.createElementNS('http://www.w3.org/2000/svg', name);
    for (const [k, v] of Object.entries(attributes ?? {})) e.setAttribute(k, v);
    if (text !== undefined) e.textContent = text;
    parent?.append(e);
    return e;
  }
  const set = (e, attributes) => { for (const [k, v] of Object.entries(attributes)) e.setAttribute(k, v); };
  const show = (e, on) => e.toggleAttribute('data-off', !on);

  function open(svg, W, H) {
    svg.replaceChildren();
    set(svg, { viewBox: `0 0 ${W} ${H}`, role: 'img' });
    svg.classList.toggle('large', W >= 1000);
  }

  const isTight = (film, t) => film.at('nose_pull', t) > Phases.tightN;
  const lineClass = tight => `line ${tight ? 'tight' : 'slack'}`;
  // A tight line is drawn 3 to 6 px thick, by its pull.
  const weight = pull => pull > Phases.tightN ? 3 + 3 * Math.min(1, pull / 0.8) : 1.7;

  function status(run, t, words, brief) {
    const film = run.film, pull = film.at('nose_pull', t);
    return pull > Phases.tightN ? `line tight, ${(brief ? words.brief : words).pull(pull)}` : `line slack, ${(brief ? words.brief : words).size(Math.max(0, film.at('slack', t)))} to spare`;
  }

  // The lure's own parts, drawn anew in place.
  function lure(parent, eye) {
    const g = el('g', { class: 'lure' }, parent), far = el('path', {}, g), near = el('path', {}, g), rim = el('path', { class: 'rim' }, g);
    const eyes = [0, 1].map(() => el('circle', { class: 'eye', r: eye }, g)), tie = el('circle', { class: 'tie', r: eye }, g);
    return (v, x, y) => {
      set(g, { transform: `translate(${px(x)} ${px(y)})` });
      set(far, { d: v.backNear ? v.belly : v.back, class: v.backNear ? 'belly' : 'back' });
      set(near, { d: v.backNear ? v.back : v.belly, class: v.backNear ? 'back' : 'belly' });
      set(rim, { d: v.outline });
      v.eyes.forEach((e, i) => { set(eyes[i], { cx: px(e.at[0]), cy: px(e.at[1]) }); show(eyes[i], e.seen); });
      set(tie, { cx: px(v.tie[0]), cy: px(v.tie[1]) });
    };
  }

  const pose = (film, t) => Hull.frame(film.at('heading', t), film.at('pitch', t), film.at('roll', t));

  // Fixed marks on the water, moved with it.
  function water(parent, W, H, step) {
    const id = `water${++made}`, pattern = el('pattern', { id, width: px(step), height: px(step), patternUnits: 'userSpaceOnUse' }, el('defs', {}, parent));
    el('circle', { cx: px(step / 2), cy: px(step / 2), r: 1.4, class: 'mark' }, pattern);
    el('rect', { width: W, height: H, class: 'water' }, parent);
    el('rect', { width: W, height: H, fill: `url(#${id})` }, parent);
    return (x, y) => set(pattern, { patternTransform: `translate(${px(x % step)} ${px(y % step)})` });
  }

  // The rod as it bends: from the hand along the straight rod, then to the tip.
  function rod(run, t) {
    const { hand, along, pull, length } = run.rod, film = run.film, angle = film.at('hand', t) / length;
    const bow = hand.map((h, i) => h + 0.62 * length * (Math.cos(angle) * along[i] + Math.sin(angle) * pull[i]));
    return [hand, bow, ['x', 'y', 'z'].map(a => film.at(`tip_${a}`, t))];
  }

  // A line as a smooth curve through its points: cubic pieces after Catmull and Rom whose parameter grows with the square root of the chord, so that
  // they neither loop nor swing out beside long chords (Yuksel, Schaefer and Keyser 2011, doi:10.1016/j.cad.2010.08.008). `seen` tells which pieces are needed.
  function smooth(list, seen = () => true) {
    const same = (p, q) => p[0] === q[0] && p[1] === q[1], all = list.filter((p, i) => i === 0 || !same(p, list[i - 1]));
    const root = (p, q) => Math.sqrt(Math.hypot(q[0] - p[0], q[1] - p[1]));
    let path = '', open = false;
    for (let i = 0; i + 1 < all.length; i++) {
      const b = all[i], c = all[i + 1];
      if (!seen(b, c)) { open = false; continue; }
      if (!open) path += `M${px(b[0])} ${px(b[1])}`;
      const mid = root(b, c), a = all[i - 1], d = all[i + 2], from = a ? root(a, b) : mid, to = d ? root(c, d) : mid;
      // Slopes at both ends, per unit of this piece; at the ends of the line, straight on.
      const slope = (p, q, r, h0, h1) => [0, 1].map(k => mid * ((q[k] - p[k]) / h0 - (r[k] - p[k]) / (h0 + h1) + (r[k] - q[k]) / h1));
      const m0 = a ? slope(a, b, c, from, mid) : [c[0] - b[0], c[1] - b[1]], m1 = d ? slope(b, c, d, mid, to) : [c[0] - b[0], c[1] - b[1]];
      path += `C${px(b[0] + m0[0] / 3)} ${px(b[1] + m0[1] / 3)} ${px(c[0] - m1[0] / 3)} ${px(c[1] - m1[1] / 3)} ${px(c[0])} ${px(c[1])}`;
      open = true;
    }
    return path;
  }

  const curve = ([a, b, c]) => `M${px(a[0])} ${px(a[1])}Q${px(b[0])} ${px(b[1])} ${px(c[0])} ${px(c[1])}`;

  return { el, set, show, open, px, points, isTight, lineClass, weight, status, lure, pose, water, rod, curve, smooth };
})();
