// The computed retrieve, played: one clock, its controls, and the pictures that follow it.
//
// Put together by the page builder, all in one module script, in this order:
//   film.js, words.js, phases.js, captions.js, hull.js, run.js, draw.js, above.js, side.js, lanes.js, stage.js, stills.js,
//   player.js, controls.js, engine.js, main.js        (in fact any order with main.js last)
// Each file declares one name (Film, Words, Phases, Captions, Hull, Run, Draw, Above, Side, Lanes, Stage, Stills, startPlayers).
// Styles: page.css first (tokens, text, player), page-text.css after it. No style attributes are written, so a
// content policy without 'unsafe-inline' for styles holds.
//
// Skeleton. Headings and the text around are the builder's; what stands inside the three elements is shown until the
// script replaces it (a still, a sentence). All are optional but the first.
//
//   <section id="walk" aria-labelledby="walk-title">
//     <h2 id="walk-title">...</h2>
//     <div id="player" class="player"></div>
//     <div id="stills" class="stills"></div>          three stills and their lanes: on paper, and where motion is unwelcome
//   </section>
//   <section id="two" aria-labelledby="two-title" hidden>   the script shows it when there are two runs or more
//     <h2 id="two-title">...</h2>
//     <div id="pair" class="pair"></div>
//   </section>
//
// What it reads of the page data, beside `units` ("trade", "metric", "both") and `runs[].id, name, setup, film`:
//   runs[].summary   pattern, warm_up_twitches, and what `retrieve --json` calls them
//   runs[].hand      [x, y, z]: where the resting rod is held, m, world axes (the rod tip at rest is [0, 0, height])
//   runs[].hull      { length, centre: [x, z], tie: [x, z], hooks: [[x, z], ...],
//                      stations: [[x, half breadth, half height, centre z], ...] }  m, from the middle of the axis,
//                    x toward the nose, z toward the back, stations from tail to nose (20 to 30 of them will do);
//                    centre is the centre of gravity, the point that lure_x, lure_y and lure_z follow
//
// startPlayers(data) returns
//   { replaceRun(id, { film, summary, setup, hand, hull }), beside(id, id), play(), pause(), seek(seconds), show(id), time, playing, run }
// replaceRun keeps the clock, and keeps it running.
'use strict';

function startPlayers(data) {
  const root = document.getElementById('player'), pairRoot = document.getElementById('pair'), stillsRoot = document.getElementById('stills');
  const words = Words.of(data.units), calm = matchMedia('(prefers-reduced-motion: reduce)');
  const runs = new Map(data.runs.map(r => [r.id, Run.open(r)])), entries = new Map(data.runs.map(r => [r.id, r])), ids = [...runs.keys()];
  const clock = { t: 0, playing: false, speed: 0.25, until: Infinity, last: 0, since: 0, held: 0, main: ids[0], sides: [ids[0], ids[1] ?? ids[0]] };
  const main = () => runs.get(clock.main), finish = () => Math.max(main().film.end, ...(pairRoot && ids.length > 1 ? clock.sides.map(id => runs.get(id).film.end) : []));

  const act = {
    toggle: () => play(!clock.playing), once, step, fill,
    speed: value => { clock.speed = value; },
    seek: t => { pause(); moveTo(t); },
    show: id => { if (!runs.has(id)) return; clock.main = id; moveTo(clock.t); layout(); },
    side: (i, id) => { clock.sides[i] = id; layout(); },
  };
  const ui = Stage.player(root, data.runs, clock, act);
  const pair = pairRoot && ids.length > 1 ? Stage.pair(pairRoot, data.runs, clock.sides, clock, act) : null;
  const visible = new Set([root]), pictures = { main: [], pair: [] };
  let lanes = null;

  // ---- drawing
  const widthOf = e => Math.max(120, Math.round(e.clientWidth));
  function layout() {
    const run = main(), W = widthOf(ui.pictures.above), p = ui.pictures;
    for (const r of runs.values()) r.since = () => clock.since;
    lanes = Lanes.make(p.lanes, run, widthOf(p.lanes), words);
    const whole = Side.whole(p.whole, run, widthOf(p.whole), words), small = widthOf(p.own) < W / 3 ? whole.H : 170;
    pictures.main = [Above.make(p.above, run, W, Math.min(Above.height(run, W), Math.max(280, innerHeight * 0.4)), words), whole,
      Side.own(p.own, run, widthOf(p.own), small, words), Side.end(p.end, run, widthOf(p.end), small), lanes];
    ui.time.max = finish().toFixed(2);
    ui.time.style.setProperty('--warm', `${(100 * run.from / finish()).toFixed(1)}%`);
    ui.setup.textContent = run.failure ? `${run.setup} The model could not finish this run; it is shown as far as it came.` : run.setup;
    tell(run);
    layoutPair();
    draw(true);
  }

  function layoutPair() {
    if (!pair) return;
    const shown = clock.sides.map(id => runs.get(id)), W = widthOf(pair.list[0].picture), H = Math.max(...shown.map(r => Above.height(r, W)));
    pictures.pair = pair.list.map((side, i) => {
      Stage.named(side.name, shown[i]);
      return Above.make(side.picture, shown[i], W, H, words);
    });
  }

  function tell(run) {
    const twitch = run.phases.twitches[run.phases.typical];
    ui.captions.replaceChildren(...twitch.phases.map(p => Stage.caption(p.name, Captions.of(run.film, twitch, p, words), () => { pause(); moveTo(Phases.best(run.film, p)); })));
    ui.about.replaceChildren(...[
      twitch.only ? '' : `These are the numbers of the twitch that begins at ${Words.seconds(twitch.from)}, the middle one of this run by its swing.`,
      Captions.legend, Captions.thinned(run.film, words),
    ].filter(Boolean).map(text => Stage.tag('p', { textContent: text })));
  }

  let phaseShown = null;
  function draw(all) {
    const run = main(), t = clock.t;
    if (all || visible.has(root)) for (const p of pictures.main) p.at(Math.min(t, run.film.end));
    if (pair && (all || visible.has(pairRoot))) pictures.pair.forEach((p, i) => {
      const own = Math.min(t, runs.get(clock.sides[i]).film.end);
      p.at(own);
      pair.list[i].picture.dataset.time = own.toFixed(3);
    });
    const phase = run.phases.at(Math.min(t, run.film.end));
    if (phase !== phaseShown || all) {
      phaseShown = phase;
      for (const li of ui.captions.children) li.toggleAttribute('data-now', li.dataset.phase === phase.name);
    }
    ui.time.value = t.toFixed(2);
    ui.clockText.textContent = `${t.toFixed(2)} s${run.phases.twitches[0].only ? '' : `, twitch ${run.phases.twitchAt(t) + 1} of ${run.phases.twitches.length}`}`;
    root.dataset.time = t.toFixed(3);
    root.dataset.phase = phase.name;
    if (!clock.playing) describe(run, Math.min(t, run.film.end));
  }

  // What a listener gets; not while it plays.
  function describe(run, t) {
    const text = Captions.moment(run, t, words);
    ui.time.setAttribute('aria-valuetext', text);
    ui.pictures.above.setAttribute('aria-label', `The lure from above. ${text}.`);
    ui.pictures.whole.setAttribute('aria-label', `The whole line from the side. ${text}.`);
    ui.pictures.own.setAttribute('aria-label', `The lure from its own side, pitch ${Words.degrees(run.film.at('pitch', t))}.`);
    ui.pictures.end.setAttribute('aria-label', `The lure from ahead, roll ${Words.degrees(run.film.at('roll', t))}.`);
    if (pair) pair.list.forEach((side, i) => {
      const other = runs.get(clock.sides[i]);
      side.picture.setAttribute('aria-label', `${other.name}, from above. ${Captions.moment(other, Math.min(t, other.film.end), words)}.`);
    });
  }

  // ---- the clock
  function moveTo(t) {
    clock.t = Math.min(Math.max(t, 0), finish());
    clock.since = 0;
    clock.last = 0;
    ui.note.textContent = '';
    draw(true);
  }

  function play(on, until = Infinity) {
    if (on && clock.t >= finish() - 1e-6) restart();
    Object.assign(clock, { playing: on, until, last: 0, held: 0 });
    for (const b of [ui.play, pair?.play]) if (b) b.textContent = on ? 'Pause' : calm.matches ? 'Play all the same' : 'Play';
    root.dataset.playing = String(on);
    if (on) requestAnimationFrame(tick); else draw(true);
  }
  const pause = () => { if (clock.playing) play(false); };

  // A run comes nearer and never repeats: at its end it starts anew after the warm-up, and says so.
  function restart() {
    clock.t = clock.since = main().from;
    ui.note.textContent = `Once more from second ${main().from.toFixed(1)}, where the walk has settled in.`;
  }

  function tick(ms) {
    if (!clock.playing) return;
    if (clock.last && !clock.held) clock.t += Math.min(ms - clock.last, 60) / 1000 * clock.speed;
    clock.last = ms;
    if (clock.t >= clock.until) {
      clock.t = clock.until;
      play(false);
      return;
    }
    if (clock.t >= finish()) hold(ms);
    draw(false);
    requestAnimationFrame(tick);
  }

  function hold(ms) {
    clock.t = finish();
    clock.held ||= ms;
    if (ms - clock.held < 900) ui.note.textContent = 'End of the run.';
    else { clock.held = 0; restart(); }
  }

  function once() {
    const list = main().phases.twitches, now = main().phases.twitchAt(clock.t), at = clock.playing || clock.t - list[now].from < 1e-3 ? now : Math.min(now + 1, list.length - 1);
    moveTo(list[at].from);
    play(true, list[at].to);
  }

  function step(by) {
    pause();
    const { all, at } = main().phases, i = all.indexOf(at(Math.min(clock.t, main().film.end)));
    moveTo(Phases.best(main().film, all[(i + by + all.length) % all.length]));
  }

  function fill() {
    if (document.fullscreenElement) document.exitFullscreen(); else root.requestFullscreen();
  }

  // ---- pointer and keys
  const drag = e => act.seek(lanes.timeAt(e.clientX - ui.pictures.lanes.getBoundingClientRect().left, ui.pictures.lanes.clientWidth));
  ui.pictures.lanes.addEventListener('pointerdown', e => { ui.pictures.lanes.setPointerCapture(e.pointerId); drag(e); });
  ui.pictures.lanes.addEventListener('pointermove', e => { if (ui.pictures.lanes.hasPointerCapture(e.pointerId)) drag(e); });
  addEventListener('keydown', e => {
    const field = e.target.closest?.('input, select, textarea, summary, a, [contenteditable]'), mine = e.target === ui.time;
    if ((field && !mine) || e.ctrlKey || e.metaKey || e.altKey || !(visible.has(root) || visible.has(pairRoot))) return;
    const by = { ArrowLeft: -1, ArrowRight: 1 }[e.key];
    if (e.key === ' ' && !e.target.closest?.('button')) { e.preventDefault(); act.toggle(); }
    if (by) { e.preventDefault(); if (e.shiftKey) step(by); else act.seek(clock.t + by * 0.02); }
  });

  // ---- start
  function replaceRun(id, { film, summary, ...more }) {
    const entry = { ...entries.get(id), ...more, film, summary: summary ?? entries.get(id).summary };
    entries.set(id, entry);
    runs.set(id, Run.open(entry));
    clock.t = Math.min(clock.t, finish());
    layout();
    if (id === ids[0]) still();
  }
  // Two runs beside each other, as if they had been chosen.
  function beside(...chosen) {
    if (!pair) return;
    chosen.forEach((id, i) => { pair.list[i].root.querySelector('select').value = id; clock.sides[i] = id; });
    layout();
  }
  const still = () => { if (stillsRoot) Stills.make(stillsRoot, runs.get(ids[0]), words); };

  if (pair) pairRoot.closest('section[hidden]')?.removeAttribute('hidden');
  clock.t = main().from;
  layout();
  still();
  new ResizeObserver(layout).observe(ui.pictures.above);
  const seen = new IntersectionObserver(list => {
    for (const s of list) if (s.isIntersecting) visible.add(s.target); else visible.delete(s.target);
  });
  for (const e of [root, pairRoot]) if (e) seen.observe(e);
  addEventListener('beforeprint', pause);
  addEventListener('fullscreenchange', () => { if (ui.fill) ui.fill.textContent = document.fullscreenElement ? 'Back to the page' : 'Fill the screen'; });
  calm.addEventListener('change', () => { if (calm.matches) pause(); });
  play(!calm.matches);

  return {
    replaceRun, beside, play: () => play(true), pause, seek: act.seek, show: act.show,
    get time() { return clock.t; }, get playing() { return clock.playing; }, get run() { return clock.main; },
  };
}
