// One run made ready for the pictures: its film, phases, hull, rod, and where the view goes.
'use strict';
const Run = (() => {
  const length = v => Math.hypot(...v);

  // The straight rod at rest and the direction of the pull, as the wrist swings it: in the plane of the rod and of straight back.
  function rod(film, hand) {
    const tip = [film.at('tip_x', 0), film.at('tip_y', 0), film.at('tip_z', 0)], held = hand ?? [tip[0] - 1, tip[1] - 1.6, tip[2] + 0.65];
    const out = tip.map((v, i) => v - held[i]), long = length(out), along = out.map(v => v / long);
    const across = along.map((v, i) => (i ? 0 : -1) + along[0] * v), size = length(across);
    return { hand: held, along, length: long, pull: size > 1e-6 ? across.map(v => v / size) : [0, 0, 1] };
  }

  const median = list => list.toSorted((a, b) => a - b)[list.length >> 1];

  // The view follows the mean of the lure's place over two twitches either way, so that it moves evenly.
  function follow(film, half) {
    const n = Math.round(film.end / film.step), sums = ['lure_x', 'lure_y'].map(name => {
      const s = new Float64Array(n + 2);
      for (let i = 0; i <= n; i++) s[i + 1] = s[i] + film.at(name, i * film.step);
      return s;
    });
    const mean = i => {
      const h = Math.min(Math.round(half / film.step), i, n - i);
      return sums.map(s => (s[i + h + 1] - s[i - h]) / (2 * h + 1));
    };
    return t => {
      const at = Math.min(Math.max(t / film.step, 0), n), i = Math.min(Math.floor(at), Math.max(n - 1, 0)), a = mean(i), b = mean(Math.min(i + 1, n));
      return a.map((v, j) => v + (b[j] - v) * (at - i));
    };
  }

  function reach(film, camera, from) {
    let most = 0;
    for (let t = from; t <= film.end; t += 0.02)
      for (const name of ['nose_y', 'lure_y']) most = Math.max(most, Math.abs(film.at(name, t) - camera(t)[1]));
    return most;
  }

  function sunk(film) {
    for (let t = 0; t <= film.end; t += film.end / 20 || 1) if (film.nodesAt(t).some(p => p[2] < -0.05)) return true;
    return false;
  }

  function open(entry) {
    const film = Film.open(entry.film), phases = Phases.of(film, entry.summary?.warm_up_twitches), list = phases.twitches;
    const period = median(list.slice(0, Math.max(1, list.length - 1)).map(t => t.to - t.from)), camera = follow(film, 2 * period);
    const from = list[phases.warm].from, tip = film.range('tip_y', from), outset = rod(film, entry.hand);
    return {
      id: entry.id, name: entry.name, setup: entry.setup ?? '', failure: entry.failure, summary: entry.summary ?? {}, film, phases, period, camera, from,
      solid: Hull.prepare(entry.hull), rod: outset, tipY: (tip[0] + tip[1]) / 2, reach: reach(film, camera, from), sunk: sunk(film),
      since: () => 0,
    };
  }

  const verdicts = {
    alternating: 'walks', 'one-sided': 'turns to one side only', skipping: 'loses twitches in the slack', tracking: 'is towed, does not walk',
    spinning: 'turns over its own line', still: 'hardly moves', irregular: 'walks unevenly, if at all', 'on-the-spot': 'turns on the spot',
    diving: 'dives', 'rolled-over': 'rolls over', standing: 'stands on end', fouling: 'hooks its own line',
  };
  const verdict = run => verdicts[run.summary.pattern] ?? '';

  return { open, verdict };
})();
