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

  const curve = ([a, b, c]) => `M${px(a[0])} ${px(a[1])}Q${px(b[0])} ${px(b[1])} ${px(c[0])} ${px(c[1])}`;

  return { el, set, show, open, px, points, isTight, lineClass, weight, status, lure, pose, water, rod, curve };
})();
