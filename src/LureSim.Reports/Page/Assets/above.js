// From above: the rod tip on the left, the lure and its last stretch of line on the right, both to one scale; the metres between are left out.
'use strict';
const Above = (() => {
  const { el, set, show, px, points } = Draw;
  const steps = 9, footprints = 4;                       // pieces of the fading trail; outlines left where pulls began

  // How many metres the picture shows, and how tall it must be, for a run and a width.
  function frame(run, W) {
    const wide = W >= 620, from = run.phases.twitches[run.phases.warm].from, tip = run.film.range('tip_x', from);
    const left = Math.min(0.6, Math.max(0.24, tip[1] - tip[0] + 0.08)), L = run.solid.length;
    const right = wide ? Math.min(1.4, Math.max(0.8, 9 * L)) : Math.min(0.9, Math.max(0.5, 5.2 * L));
    const k = W / (left + right);
    return { wide, k, left, right, tip, cut: left * k };
  }

  function height(run, W) {
    const f = frame(run, W), r = run.reach;
    return Math.round(Math.min(0.95 * W, Math.max(0.3 * W, 190, (2 * r + 0.06) * f.k + 84)));
  }

  function make(svg, run, W, H, words, still) {
    const f = frame(run, W), { film, solid } = run, k = f.k, mid = H / 2 + 4, lureAt = f.cut + (W - f.cut) * 0.44;
    Draw.open(svg, W, H);
    const main = el('g', {}, svg), moveWater = Draw.water(main, W, H, words.grid * k);
    const trail = Array.from({ length: steps }, (_, i) => ['path-centre', 'path-nose'].map(c => el('polyline', { class: c, opacity: (((i + 1) / steps) ** 1.3).toFixed(2) }, main)));
    const prints = Array.from({ length: footprints }, (_, i) => el('path', { class: 'footprint', opacity: (0.75 - 0.15 * i).toFixed(2) }, main));
    const line = el('path', {}, main), lever = el('path', { class: 'lever' }, main), drawLure = Draw.lure(main, f.wide ? 3.4 : 2.2);
    const arrow = el('path', { class: 'force' }, main), force = el('text', { class: 'force-text halo' }, main);
    const rodBox = el('svg', { width: px(f.cut), height: H }, svg), moveDots = Draw.water(rodBox, f.cut, H, words.grid * k);
    const nearLine = el('path', {}, rodBox), rod = el('path', { class: 'rod' }, rodBox), ring = el('circle', { class: 'ring', r: f.wide ? 4.5 : 3.5 }, rodBox);
    el('rect', { x: px(f.cut - 5), width: 10, height: H, class: 'gap' }, svg);
    for (const x of [-5, 5]) el('path', { d: `M${px(f.cut + x)} 0v${H}`, class: 'cut' }, svg);
    el('text', { x: 12, y: 24, class: 'soft halo' }, svg, 'rod tip');
    const say = el('text', { x: px(f.cut + 16), y: 24 }, svg), omitted = f.wide ? el('text', { x: px(f.cut + 16), y: H - 14, class: 'soft halo' }, svg) : null;
    scaleBar(svg, W, H, k, words);

    const tipX = x => (x - f.tip[1] - 0.04) * k + f.cut, tipY = y => mid - (y - run.tipY) * k;
    function at(t) {
      const cam = run.camera(t), X = x => lureAt + (x - cam[0]) * k, Y = y => mid - (y - cam[1]) * k;
      const tight = Draw.isTight(film, t), pull = film.at('nose_pull', t), nodes = film.nodesAt(t), cls = Draw.lineClass(tight);
      moveWater(X(0), Y(0));
      moveDots(tipX(0), tipY(0));
      drawTrail(run, trail, t, X, Y);
      drawPrints(run, prints, t, X, Y, k);
      const thick = Draw.weight(pull).toFixed(1);
      set(line, { class: cls, 'stroke-width': thick, d: Draw.smooth(nodes.map(p => [X(p[0]), Y(p[1])]), within(W)) });
      set(nearLine, { class: cls, 'stroke-width': thick, d: Draw.smooth(nodes.map(p => [tipX(p[0]), tipY(p[1])]), within(f.cut)) });
      set(rod, { d: Draw.curve(Draw.rod(run, t).map(p => [tipX(p[0]), tipY(p[1])])) });
      set(ring, { cx: px(tipX(nodes[0][0])), cy: px(tipY(nodes[0][1])) });
      const centre = [X(film.at('lure_x', t)), Y(film.at('lure_y', t))], seen = Hull.view(solid, Draw.pose(film, t), ...Hull.above, k);
      drawLure(seen, ...centre);
      drawForce({ arrow, force, lever }, seen, centre, nodes, X, Y, pull, tight, f.wide, words);
      say.textContent = f.wide ? Draw.status(run, t, words) : Draw.status(run, t, words, true).replace(' to spare', '').replace('line ', '');
      say.setAttribute('class', `say halo ${tight ? 'tight' : 'slack'}`);
      if (omitted) omitted.textContent = `${words.distance(Math.max(0, film.at('lure_x', t) - f.right * 0.44))} of line left out here`;
      if (still) svg.setAttribute('aria-label', `From above. ${Captions.moment(run, t, words)}.`);
    }
    return { at };
  }

  // Whether a piece of line crosses a picture of this width; the metres outside would make the page seem wide.
  const within = W => (p, q) => Math.max(p[0], q[0]) > 0 && Math.min(p[0], q[0]) < W;

  function drawTrail(run, trail, t, X, Y) {
    const { film } = run, long = 2.6 * run.period, from = Math.max(run.since(t), t - long);
    trail.forEach(([centre, nose], i) => {
      const a = Math.max(from, t - long * (1 - i / steps)), b = t - long * (1 - (i + 1) / steps), row = [];
      for (let j = 0; b > a && j <= 8; j++) row.push(a + (b - a) * j / 8);
      set(centre, { points: points(row.map(u => [X(film.at('lure_x', u)), Y(film.at('lure_y', u))])) });
      set(nose, { points: points(row.map(u => [X(film.at('nose_x', u)), Y(film.at('nose_y', u))])) });
    });
  }

  // Where the lure lay when each of the last pulls began.
  function drawPrints(run, prints, t, X, Y, k) {
    const last = run.phases.twitchAt(t), { film, solid } = run;
    prints.forEach((p, i) => {
      const from = run.phases.twitches[last - i]?.from ?? -1, seen = from >= run.since(t) && t - from > 0.04;
      show(p, seen);
      if (!seen) return;
      if (p.of !== from || p.k !== k) {
        p.of = from;
        p.k = k;
        p.setAttribute('d', Hull.view(solid, Draw.pose(film, from), ...Hull.above, k).outline);
      }
      p.setAttribute('transform', `translate(${px(X(film.at('lure_x', from)))} ${px(Y(film.at('lure_y', from)))})`);
    });
  }

  // The pull at the nose as an arrow along the line, and the lever it has about the centre of gravity.
  function drawForce({ arrow, force, lever }, seen, centre, nodes, X, Y, pull, tight, wide, words) {
    for (const e of [arrow, force, lever]) show(e, tight);
    if (!tight) return;
    const tie = [centre[0] + seen.tie[0], centre[1] + seen.tie[1]], back = nodes.at(-2), to = [X(back[0]), Y(back[1])];
    const far = Math.hypot(to[0] - tie[0], to[1] - tie[1]) || 1, d = [(to[0] - tie[0]) / far, (to[1] - tie[1]) / far];
    const long = (wide ? 34 : 22) + (wide ? 90 : 40) * Math.min(1.2, pull), [ax, ay] = [tie[0] + d[0] * long, tie[1] + d[1] * long], n = [-d[1], d[0]], head = wide ? 13 : 9;
    set(arrow, { d: `M${px(tie[0])} ${px(tie[1])}L${px(ax - d[0] * head)} ${px(ay - d[1] * head)}M${px(ax)} ${px(ay)}l${px(-d[0] * head * 1.3 + n[0] * head * 0.7)} ${px(-d[1] * head * 1.3 + n[1] * head * 0.7)}l${px(-n[0] * head * 1.4)} ${px(-n[1] * head * 1.4)}z` });
    set(force, { x: px(ax + n[0] * 4), y: px(ay - 14), 'text-anchor': 'middle' });
    force.textContent = words.brief.pull(pull);
    const along = (centre[0] - tie[0]) * d[0] + (centre[1] - tie[1]) * d[1], foot = [tie[0] + d[0] * along, tie[1] + d[1] * along];
    set(lever, { d: `M${px(centre[0])} ${px(centre[1])}L${px(foot[0])} ${px(foot[1])}L${px(tie[0])} ${px(tie[1])}` });
  }

  function scaleBar(svg, W, H, k, words) {
    const long = words.grid * k;
    el('path', { d: `M${px(W - 14 - long)} ${H - 22}v8h${px(long)}v-8`, class: 'bar' }, svg);
    el('text', { x: px(W - 22 - long), y: H - 13, 'text-anchor': 'end', class: 'soft halo' }, svg, words.size(words.grid));
  }

  return { make, height };
})();
