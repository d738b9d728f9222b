// Sliders that compute: each stop is a difference from the file's own run, made by the program, which this script only lays on.
//
// Page data read here: run (the own run, all numbers resolved), controls (see ControlJson.cs), retrieve (its command), patterns (words), units.
// Solver: { ready, run(run, { coarse }) -> Promise<answer as RunAnswer.cs writes it>, name }; a newer call cancels the older one.
'use strict';

const Patch = (() => {
  const names = place => place.split('/').slice(1).map(s => s.replaceAll('~1', '/').replaceAll('~0', '~'));

  function set(document, place, value) {
    const path = names(place), last = path.pop();
    let at = document;
    for (const step of path) at = at?.[step];
    if (at === null || typeof at !== 'object' || !Object.hasOwn(at, last)) throw new Error(`no place ${place}`);
    at[last] = structuredClone(value);
  }

  // From the last slider to the first: where two reach one number, the first in the list has the last word.
  function apply(run, patches) {
    const document = structuredClone(run);
    for (const patch of patches.toReversed()) for (const [place, value] of Object.entries(patch)) set(document, place, value);
    return document;
  }

  return { apply };
})();

function startControls(data, player, solver = typeof embeddedSolver === 'function' ? embeddedSolver() : null) {
  const root = document.getElementById('sliders');
  if (!root || !solver || !data.controls?.length) return null;
  const tag = Stage.tag, words = Words.of(data.units), own = data.runs[0], tried = data.runs.find(r => r.like === own.id);
  const at = data.controls.map(c => c.own), finer = 350, atOnce = 60;
  let timer = 0, turn = 0, beside = false;

  // ---- elements
  const status = tag('p', { className: 'solver-status', attr: { role: 'status' } });
  const sliders = data.controls.map((control, i) => {
    const id = `slider-${control.id}`, text = tag('output', { htmlFor: id, className: 'slider-value' });
    const input = tag('input', { type: 'range', id, min: '0', max: String(control.stops.length - 1), step: '1', value: String(control.own), oninput: () => moved(i, Number(input.value), false), onchange: () => moved(i, Number(input.value), true) });
    input.dataset.own = String(control.own);
    return { input, text, root: tag('div', { className: 'slider' }, tag('label', { htmlFor: id, textContent: control.label }), text, input) };
  });
  const back = tag('button', { type: 'button', className: 'back', textContent: "Back to the file's own values", onclick: reset });
  const table = tag('div', { className: 'tried' }), command = tag('code', {}), copy = tag('button', { type: 'button', className: 'copy', textContent: 'Copy', onclick: toClipboard });
  root.replaceChildren(
    tag('div', { className: 'slider-list' }, ...sliders.map(s => s.root)),
    tag('div', { className: 'solver-bar' }, back, status), table,
    tag('div', { className: 'slider-command' }, tag('p', { textContent: 'The same with the program:' }), tag('pre', {}, command), copy),
    tag('p', { className: 'key', textContent: 'Same model as the program; last digits may differ. While a slider moves, the answer is a quick one: a line of 20 pieces and steps of 1 ms. Then the fine one follows. The hand, the water and everything without a slider stay as in the file.' }));

  // ---- state
  const stop = i => data.controls[i].stops[at[i]];
  const changed = () => data.controls.map((c, i) => i).filter(i => at[i] !== data.controls[i].own);

  function moved(i, value, settled) {
    if (at[i] === value && !settled) return;
    at[i] = value;
    show();
    ask(settled ? 0 : finer);
  }

  function reset() {
    data.controls.forEach((c, i) => { at[i] = c.own; });
    show();
    ask(0);
  }

  function show() {
    sliders.forEach((s, i) => {
      const label = stop(i).label, isOwn = at[i] === data.controls[i].own;
      s.input.value = String(at[i]);
      s.input.setAttribute('aria-valuetext', isOwn ? `${label}, as in the file` : label);
      s.text.textContent = label;
      s.root.toggleAttribute('data-changed', !isOwn);
    });
    command.textContent = [data.retrieve, ...changed().map(i => stop(i).typed)].join(' ');
    back.disabled = changed().length === 0;
  }

  // ---- computing: a coarse answer soon, a fine one when the hand rests; an answer that was overtaken is dropped
  function ask(rest) {
    clearTimeout(timer);
    const mine = ++turn;
    if (changed().length === 0) {
      arrived(own, 0, null);
      say('These are the values of the file.');
      return;
    }
    timer = setTimeout(() => compute(mine, rest), atOnce);
  }

  async function compute(mine, rest) {
    let run;
    try {
      run = Patch.apply(data.run, data.controls.map((c, i) => stop(i).patch));
      for (const coarse of [true, false]) {
        if (!coarse && rest) await new Promise(done => setTimeout(done, rest));
        if (mine !== turn) return;
        say(coarse ? 'Computing…' : 'Computing the fine answer…', true);
        const begun = performance.now(), answer = await solver.run(run, { coarse });
        if (mine !== turn || !answer) return;
        arrived(answer, (performance.now() - begun) / 1000, coarse);
      }
    } catch (fault) {
      if (mine === turn && fault?.name !== 'AbortError') failed(fault?.message ?? String(fault));
    }
  }

  function arrived(answer, seconds, coarse) {
    if (!answer.film || !answer.summary) {
      failed(answer.failure ?? 'there is no answer');
      return;
    }
    const summary = { pattern: answer.pattern, warm_up_twitches: answer.warm_up_twitches, ...answer.summary };
    if (tried) {
      player.replaceRun(tried.id, { film: answer.film, summary, setup: setup(), ...drawn() });
      if (!beside && coarse !== null) player.beside?.(own.id, tried.id);
      beside ||= coarse !== null;
    }
    compare(summary, coarse);
    if (answer.failure) failed(`${answer.failure} What is shown is what it had until then.`);
    else if (coarse !== null) say(`${coarse ? 'Quick answer' : 'Fine answer'} in ${seconds.toFixed(1)} s.`);
  }

  const setup = () => changed().map(i => `${data.controls[i].label.toLowerCase()}: ${stop(i).label}`).join('; ') || own.setup;

  function drawn() {
    const parts = changed().map(i => stop(i).drawn ?? {}), hull = Object.assign({}, own.hull, ...parts.map(p => p.hull ?? {}));
    return Object.assign({ hand: own.hand }, ...parts.map(({ hand }) => (hand ? { hand } : {})), { hull });
  }

  function failed(why) {
    say(`The model stops here: ${why}`);
    root.dataset.state = 'failed';
  }

  function say(text, busy = false) {
    status.textContent = text;
    root.dataset.state = busy ? 'busy' : 'done';
  }

  // ---- numbers beside each other
  const percent = v => `${Math.round(100 * v)} %`, degrees = v => `${Math.round(v)}°`;
  const rows = [
    ['what it does', s => data.patterns[s.pattern] ?? s.pattern], ['swing from side to side', s => degrees(s.heading_swing_deg)],
    ['glide to the side a twitch', s => words.size(s.glide_width_m)], ['nearer a twitch', s => words.size(s.advance_per_twitch_m)],
    ['line slack at the nose', s => `${percent(s.slack_share)} of the time`], ['pull at the nose, peak', s => words.pull(s.nose_tension_peak_N)],
  ];

  function compare(summary, coarse) {
    const head = tag('tr', {}, tag('td', {}), ...['as in the file', coarse === null ? 'no change yet' : coarse ? 'your change, quick' : 'your change'].map(t => tag('th', { scope: 'col', textContent: t })));
    const body = rows.map(([name, value]) => tag('tr', {}, tag('th', { scope: 'row', textContent: name }), ...[own.summary, summary].map(s => tag('td', { textContent: value(s) }))));
    table.replaceChildren(tag('table', { className: 'tried-table' }, tag('thead', {}, head), tag('tbody', {}, ...body)));
    root.dataset.answer = coarse === null ? 'own' : coarse ? 'coarse' : 'fine';
    root.answer = summary;
  }

  async function toClipboard() {
    try {
      await navigator.clipboard.writeText(command.textContent);
      copy.textContent = 'Copied';
    } catch {
      getSelection().selectAllChildren(command);
      copy.textContent = 'Selected: copy it';
    }
    setTimeout(() => { copy.textContent = 'Copy'; }, 2500);
  }

  show();
  compare(own.summary, null);
  say(`${solver.name} wakes up…`, true);
  // Who moved a slider before it was awake reads what comes of that.
  solver.ready.then(() => { if (turn === 0) say('Ready: move a slider.'); }, fault => failed(`${solver.name} cannot start (${fault?.message ?? fault}). The rest of the page works without it.`));
  return { set: (id, value) => { const i = data.controls.findIndex(c => c.id === id); moved(i, value, true); }, sets: () => changed().flatMap(i => stop(i).set), reset };
}
