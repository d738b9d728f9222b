// What happens in a twitch, from the run's own numbers: pull, turn, coast, wait, and tow where the line is tight again too early.
'use strict';
const Phases = (() => {
  const tightN = 0.02;                                   // the program's own bound between slack and tight at the nose
  const turning = 100 * Math.PI / 180, resting = 0.06;   // rad/s and m/s: under these a turn, a coast has ended
  const dt = 0.01, shortest = 0.025;

  // A twitch begins where the hand last rested before it rose by a twentieth of its stroke.
  function starts(film) {
    const stroke = film.range('hand')[1], found = [];
    let low = Infinity, since = 0, rising = false, high = 0;
    for (let t = 0; t <= film.end; t += dt) {
      const h = film.at('hand', t);
      if (rising) {
        high = Math.max(high, h);
        if (h < high - 0.05 * stroke) { rising = false; low = h; since = t; }
      } else if (h <= low + 0.002 * stroke) {
        low = Math.min(low, h);
        since = t;
      } else if (h > low + 0.05 * stroke) {
        rising = true;
        high = h;
        found.push(since);
      }
    }
    return found;
  }

  const rate = (film, name, t) => (film.at(name, t + dt) - film.at(name, t - dt)) / (Math.min(t + dt, film.end) - Math.max(t - dt, 0));
  const speed = (film, t) => Math.hypot(rate(film, 'lure_x', t), rate(film, 'lure_y', t));

  // Spans in which the nose feels the line, gaps of under 50 ms closed.
  function tightSpans(film, from, to) {
    const spans = [];
    for (let t = from; t < to; t += dt) {
      if (film.at('nose_pull', t) <= tightN) continue;
      const last = spans.at(-1);
      if (last && t - last[1] < 0.05) last[1] = t + dt; else spans.push([t, t + dt]);
    }
    return spans;
  }

  function handTop(film, from, to) {
    let top = from;
    for (let t = from; t < to; t += dt) if (film.at('hand', t) > film.at('hand', top)) top = t;
    return top;
  }

  function split(film, from, to) {
    const spans = tightSpans(film, from, to), top = handTop(film, from, to), pulled = spans.findLast(s => s[0] < top + 0.05);
    const reached = Boolean(pulled) && pulled[1] > from + 0.03;
    const release = Math.min(reached ? Math.min(pulled[1], top + 0.25) : top, to);
    const again = spans.find(s => Math.min(s[1], to) - Math.max(s[0], release) >= 0.08);
    const tow = again ? Math.max(again[0], release) : to;
    let turn = release;
    const sign = Math.sign(rate(film, 'heading', release + dt));
    while (turn < tow && sign * rate(film, 'heading', turn + dt) > turning) turn += dt;
    let coast = turn;
    while (coast < tow && speed(film, coast) > resting) coast += dt;
    const parts = [['pull', from, release], ['turn', release, Math.min(turn, tow)], ['coast', turn, Math.min(coast, tow)], ['wait', coast, tow], ['tow', tow, to]];
    const kept = parts.filter(([, a, b]) => b - a > shortest).map(([name, a, b]) => ({ name, from: a, to: b }));
    kept.forEach((p, i) => { p.to = i + 1 < kept.length ? kept[i + 1].from : to; });
    if (kept.length) kept[0].from = from;
    return { from, to, reached, phases: kept };
  }

  function swing(film, twitch) {
    const [low, high] = film.range('heading', twitch.from, twitch.to);
    return high - low;
  }

  // The twitch that stands for the run: the one with the middle swing among those after the warm-up.
  function typical(film, twitches, warm) {
    const later = twitches.slice(warm, -1), among = later.length ? later : twitches;
    const sorted = [...among].sort((a, b) => swing(film, a) - swing(film, b));
    return twitches.indexOf(sorted[sorted.length >> 1]);
  }

  function of(film, warmUp) {
    const at = starts(film);
    const twitches = at.map((from, i) => split(film, from, at[i + 1] ?? film.end));
    // A line reeled in without a twitch.
    if (!twitches.length) twitches.push({ from: 0, to: film.end, reached: true, only: true, phases: [{ name: 'tow', from: 0, to: film.end }] });
    const warm = Math.min(warmUp ?? Math.floor(twitches.length / 3), Math.max(twitches.length - 3, 0));
    const all = twitches.flatMap(t => t.phases);
    return {
      twitches, all, warm, typical: typical(film, twitches, warm),
      at: t => all.findLast(p => p.from <= t + 1e-6) ?? all[0],
      twitchAt: t => Math.max(0, twitches.findLastIndex(w => w.from <= t + 1e-6)),
    };
  }

  // The moment of a phase that shows it best: a pull at its hardest, the others well under way.
  function best(film, p) {
    let t = p.from + (p.to - p.from) * ({ turn: 0.5, coast: 0.85 }[p.name] ?? 0.6);
    if (p.name !== 'pull') return t;
    for (let u = p.from; u < p.to; u += film.stepOf('nose_pull')) if (film.at('nose_pull', u) > film.at('nose_pull', t)) t = u;
    return t;
  }

  return { of, tightN, speed, best };
})();
