// From the side: hand, rod, the whole line and the lure, heights drawn larger; beside it the lure from its own side and from ahead.
'use strict';
const Side = (() => {
  const { el, set, px } = Draw;

  function whole(svg, run, W, words) {
    const { film } = run, wide = W >= 560, side = 14, from = run.rod.hand[0] - 0.25, to = film.range('lure_x')[1] + 0.35;
    const k = (W - 2 * side) / (to - from), top = Math.max(run.rod.hand[2], film.range('tip_z')[1]) + 0.12;
    const air = wide ? Math.min(150, W * 0.2) : 120, up = Math.max(1, Math.round(air / top / k)), kz = up * k;
    const H = Math.round(top * kz) + (wide ? 70 : 96), sea = H - 46, X = x => side + (x - from) * k, Z = z => sea - z * kz;
    Draw.open(svg, W, H);
    el('rect', { width: W, height: H, class: 'air' }, svg);
    el('rect', { y: sea, width: W, height: H - sea, class: 'deep' }, svg);
    el('path', { d: `M0 ${sea}H${W}`, class: 'surface' }, svg);
    const wetBar = el('path', { class: 'bar' }, svg), line = el('path', {}, svg), rod = el('path', { class: 'rod' }, svg);
    const ring = el('circle', { class: 'ring', r: 3.5 }, svg), hand = run.rod.hand;
    el('circle', { cx: px(X(hand[0])), cy: px(Z(hand[2])), r: 6.5, class: 'hand' }, svg);
    el('text', { x: px(X(hand[0]) + 14), y: px(Z(hand[2]) + 1), class: 'soft' }, svg, `hand, ${(wide ? words : words.brief).distance(hand[2])} up`);
    const lure = el('path', { class: 'lure-mark', d: 'M-9 0Q-9 -4 0 -5Q11 -5 12 0Q11 5 0 5Q-9 4 -9 0z' }, svg), lureText = el('text', { class: 'soft', 'text-anchor': 'middle' }, svg, 'lure');
    const say = el('text', { x: W - side, y: 24, 'text-anchor': 'end' }, svg), wetText = el('text', { y: H - 12, 'text-anchor': 'end' }, svg);
    el('text', { x: W - side, y: 46, 'text-anchor': 'end', class: 'soft' }, svg, up === 1 ? 'heights to scale' : `heights drawn ${up} times`);

    // The solver's figure, which tables and summaries give too.
    const wetted = (t, lying) => {
      const m = Math.min(lying, Math.max(0, film.at('wet_line', t)));
      return wide ? `, wetted line ${words.brief.distance(m)}` : '';
    };

    function at(t) {
      const nodes = film.nodesAt(t), pull = film.at('nose_pull', t), tight = Draw.isTight(film, t), end = nodes.at(-1), [wet, shore] = lying(nodes);
      set(line, { class: Draw.lineClass(tight), 'stroke-width': Draw.weight(pull).toFixed(1), d: Draw.smooth(nodes.map(p => [X(p[0]), Z(p[2])])) });
      const bent = Draw.rod(run, t).map(p => [X(p[0]), Z(p[2])]);
      set(rod, { d: Draw.curve(bent) });
      set(ring, { cx: px(bent[2][0]), cy: px(bent[2][1]) });
      set(lure, { transform: `translate(${px(X(end[0]) + 9)} ${px(Z(film.at('lure_z', t)))})` });
      set(lureText, { x: px(Math.min(X(end[0]) + 9, W - 24)), y: px(sea - 14) });
      const right = X(end[0]), left = X(shore);
      set(wetBar, { d: wet > 0.05 && !run.sunk ? `M${px(left)} ${sea + 9}v9H${px(right)}v-9` : '' });
      set(wetText, { x: px(Math.max(right, wide ? 260 : 200)) });
      wetText.textContent = wet > 0.05 ? `${words.brief.distance(wet)} of line ${run.sunk ? 'in' : 'on'} the water${wetted(t, wet)}` : 'all of the line is off the water';
      say.textContent = Draw.status(run, t, words, !wide);
      say.setAttribute('class', `say ${tight ? 'tight' : 'slack'}`);
    }
    return { at, H };
  }

  // How much line before the lure lies in or within a centimetre of the water, and at which x it comes down. The wetted
  // line counts line that floats by the share of it that is under, about half.
  function lying(nodes) {
    let length = 0;
    for (let i = nodes.length - 1; i > 0; i--) {
      const [a, b] = [nodes[i - 1], nodes[i]], long = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]), near = 0.01;
      if (a[2] <= near || i === nodes.length - 1) { length += long; continue; }
      const share = Math.min(1, Math.max(0, (near - b[2]) / (a[2] - b[2])));
      return [length + share * long, b[0] + share * (a[0] - b[0])];
    }
    return [length, nodes[0][0]];
  }

  // The lure in the water at the picture's middle, seen along `looking`.
  function close(svg, run, W, H, k, label, texts) {
    const { film } = run, level = H * 0.6;
    Draw.open(svg, W, H);
    el('rect', { width: W, height: H, class: 'air' }, svg);
    const hooks = (run.solid.hooksAt ?? []).map(() => el('path', { class: 'hook' }, svg)), draw = Draw.lure(svg, k > 1500 ? 4 : 2.6);
    el('rect', { y: px(level), width: W, height: px(H - level), class: 'deep over' }, svg);
    el('path', { d: `M0 ${px(level)}H${W}`, class: 'surface' }, svg);
    const plumb = el('path', { class: 'plumb' }, svg);
    el('text', { x: 10, y: 24, class: 'soft' }, svg, label);
    const say = [46, 68].map(y => el('text', { x: 10, y: Math.min(y, y === 46 ? y : H - 10) }, svg));
    return {
      level, say, plumb,
      put(view, z) {
        const y = level - z * k;
        draw(view, W / 2, y);
        view.hooks.forEach((h, i) => set(hooks[i], { d: treble(W / 2 + h[0], y + h[1], Math.min(15, Math.max(9, k * 0.01))) }));
        texts(say);
        return y;
      },
    };
  }

  const treble = (x, y, s) => `M${px(x)} ${px(y)}v${px(s * 0.9)}m0 0c${px(-s * 0.1)} ${px(s * 0.9)} ${px(-s)} ${px(s * 0.8)} ${px(-s * 0.9)} ${px(-s * 0.1)}M${px(x)} ${px(y + s * 0.9)}c${px(s * 0.1)} ${px(s * 0.9)} ${px(s)} ${px(s * 0.8)} ${px(s * 0.9)} ${px(-s * 0.1)}`;

  function own(svg, run, W, H, words) {
    const { film, solid } = run, k = W / (1.5 * solid.length);
    let now = 0;
    const picture = close(svg, run, W, H, k, 'from its own side', say => {
      const pitch = film.at('pitch', now), dip = -film.at('nose_z', now);
      say[0].textContent = `nose ${pitch >= 0 ? 'up' : 'down'} ${Words.degrees(pitch)}`;
      say[1].textContent = dip > 0.001 ? `${words.brief.size(dip)} under` : '';
    });
    return {
      at(t) {
        now = t;
        const axes = Draw.pose(film, t);
        picture.put(Hull.view(solid, axes, axes.ahead.map(v => -v), [0, 0, 1], k), film.at('lure_z', t));
      },
    };
  }

  function end(svg, run, W, H) {
    const { film, solid } = run, k = Math.min(W, H) * 0.5 / (2.2 * solid.widest);
    let now = 0;
    const picture = close(svg, run, W, H, k, 'from ahead', say => {
      const roll = Math.atan2(Math.sin(film.at('roll', now)), Math.cos(film.at('roll', now))), d = Math.abs(roll) * 180 / Math.PI;
      say[0].textContent = d < 1.5 ? 'upright' : `rolled ${Words.degrees(roll)}`;
      say[1].textContent = d > 90 ? 'belly up' : '';
    });
    return {
      at(t) {
        now = t;
        const axes = Draw.pose(film, t), level = axes.level, y = picture.put(Hull.view(solid, axes, level, [0, 0, 1], k), film.at('lure_z', t));
        const side = axes.up[0] * level[0] + axes.up[1] * level[1], r0 = solid.widest * 1.12 * k, r1 = solid.widest * 1.5 * k;
        const far = Math.hypot(side, axes.up[2]) || 1, d = [side / far, -axes.up[2] / far];
        set(picture.plumb, { d: `M${px(W / 2 + d[0] * r0)} ${px(y + d[1] * r0)}L${px(W / 2 + d[0] * r1)} ${px(y + d[1] * r1)}` });
      },
    };
  }

  return { whole, own, end };
})();
