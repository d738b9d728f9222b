// A sentence or two for each phase, with the numbers of one twitch of this run.
'use strict';
const Captions = (() => {
  function measure(film, phase) {
    const { from, to } = phase, end = Math.max(from, to - 0.001), change = name => film.at(name, end) - film.at(name, from);
    const bearing = Math.atan2(film.at('tip_y', end) - film.at('lure_y', end), film.at('tip_x', end) - film.at('lure_x', end));
    const off = Math.atan2(Math.sin(film.at('heading', end) - bearing), Math.cos(film.at('heading', end) - bearing));
    return {
      time: Words.seconds(to - from), turned: Math.abs(change('heading')), aside: Math.abs(change('lure_y')), nearer: -change('lure_x'),
      off, speed: Phases.speed(film, end), pull: film.range('nose_pull', from, to)[1], slack: Math.max(0, film.range('slack', from, to)[1]),
      stroke: film.range('hand', from, to)[1], dip: -film.range('nose_z', from, to)[0],
    };
  }

  const where = off => {
    const d = Math.abs(off) * 180 / Math.PI;
    return d < 12 ? 'nearly at the rod' : d > 168 ? 'nearly away from the rod' : `${Words.degrees(off)} off the line, to the angler's ${off > 0 ? 'right' : 'left'}`;
  };

  const way = (w, m) => Math.abs(m) < 0.002 ? '' : ` and ${w.size(Math.abs(m))} ${m > 0 ? 'toward' : 'away from'} the rod`;

  const sentences = {
    pull: (m, w, twitch) => twitch.reached
      ? `The hand pulls ${w.size(m.stroke)} in all. The line takes up its slack, comes tight and draws the nose with up to ${w.pull(m.pull)}. The force acts at the nose, so it turns the lure: ${Words.degrees(m.turned)} in ${m.time}.`
      : `The hand pulls ${w.size(m.stroke)}, but the slack swallows it: the nose feels no more than ${w.pull(m.pull)}.`,
    turn: (m, w) => `The line is slack again, by up to ${w.size(m.slack)}, and holds nothing. The turn runs on by itself: ${Words.degrees(m.turned)} more in ${m.time}, and the lure slips ${w.size(m.aside)} to the side.`,
    coast: (m, w) => `No pull and hardly any turn: the lure slides on, ${w.size(m.aside)} to the side${way(w, m.nearer)}. Its nose points ${where(m.off)}.`,
    wait: (m, w) => `The lure has all but stopped (${w.speed(m.speed)}), its nose ${where(m.off)}. It lies across the line, so the next pull must turn it back.`,
    tow: (m, w, twitch) => twitch.only ? `No twitch: the line draws the nose along with up to ${w.pull(m.pull)}, ${w.distance(Math.max(0, m.nearer))} nearer in ${m.time}.` : `The line is tight again before the next twitch and drags the nose along with up to ${w.pull(m.pull)}. Towed, the lure cannot turn across.`,
  };

  const of = (film, twitch, phase, words) => sentences[phase.name](measure(film, phase), words, twitch);

  // What a still, or a listener, needs to know of one moment.
  function moment(run, t, words) {
    const film = run.film, m = measure(film, { from: t, to: t + 0.001 }), pull = film.at('nose_pull', t);
    const line = pull > Phases.tightN ? `line tight, ${words.pull(pull)} at the nose` : `line slack by ${words.size(Math.max(0, film.at('slack', t)))}`;
    return `${Words.seconds(t)}, ${run.phases.at(t).name}: ${line}, nose ${where(m.off)}`;
  }

  const legend = 'Broad trail: the lure\'s centre of gravity. Thin trail: its nose. Dashed outlines: where it lay when a pull began. Arrow: the pull at the nose; ' +
    'the dashes from the centre show the lever by which it turns the lure. Bold line: tight. Thin line: slack. Wetted line: what floats counts by the share of it that is wet, about half. Hooks are drawn, not computed; how far a lure rolls is the least certain.';

  // How far the film may be from what the solver recorded.
  function thinned(film, w) {
    const place = Math.max(film.error('lure_x'), film.error('lure_y')), line = film.lineError ? `, points of the line ${w.size(film.lineError)}` : '';
    const ms = step => `${Number((step * 1000).toFixed(1))} ms`;
    return `The film keeps a frame every ${ms(film.step)}, of the pull every ${ms(film.stepOf('nose_pull'))}. It strays from the solver's own record by at most: lure ${w.size(place)}, heading ${(film.error('heading') * 180 / Math.PI).toFixed(1)}°${line}, ` +
      `pull ${w.pull(film.error('nose_pull'))}. Lines are drawn smooth between the points that were computed.`;
  }

  return { of, moment, legend, thinned };
})();
