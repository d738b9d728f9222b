// The elements of the player: pictures, bar of buttons, captions; the pair; the stills for paper. Text goes in as text only.
'use strict';
const Stage = (() => {
  function tag(name, properties, ...children) {
    const e = document.createElement(name), { data = {}, attr = {}, ...plain } = properties ?? {};
    Object.assign(e, plain);
    Object.assign(e.dataset, data);
    for (const [k, v] of Object.entries(attr)) e.setAttribute(k, v);
    e.append(...children);
    return e;
  }
  function svgOf(cls) {
    const e = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    e.setAttribute('class', cls);
    e.setAttribute('role', 'img');
    return e;
  }

  const button = (text, cls, onclick, attr) => tag('button', { type: 'button', className: cls, textContent: text, onclick, attr });

  function chooser(runs, picked, label, change) {
    return tag('select', { attr: { 'aria-label': label }, onchange: e => change(e.target.value) },
      ...runs.map(r => tag('option', { value: r.id, textContent: r.name, selected: r.id === picked })));
  }

  const speeds = [[1, '1×', 'real speed'], [0.5, '½×', 'half speed'], [0.25, '¼×', 'quarter speed']];

  function speed(clock, act) {
    return tag('fieldset', { className: 'speed' }, tag('legend', { className: 'unseen', textContent: 'Speed' }),
      ...speeds.map(([value, text, label]) => tag('label', {},
        tag('input', { type: 'radio', name: 'player-speed', value: String(value), checked: clock.speed === value, attr: { 'aria-label': label }, onchange: () => act.speed(value) }),
        tag('span', { textContent: text }))));
  }

  function bar(clock, act, small) {
    const play = button('Play', 'play', act.toggle), parts = [play];
    if (!small) parts.push(button('One twitch', 'once', act.once));
    parts.push(tag('span', { className: 'phase-steps' }, button('←', 'step', () => act.step(-1), { 'aria-label': 'Phase before', title: 'Phase before' }),
      button('→', 'step', () => act.step(1), { 'aria-label': 'Next phase', title: 'Next phase' })));
    if (!small) parts.push(speed(clock, act));
    const fill = !small && document.fullscreenEnabled ? button('Fill the screen', 'fill', act.fill) : null;
    if (fill) parts.push(fill);
    return { root: tag('div', { className: 'bar' }, ...parts), play, fill };
  }

  function player(root, runs, clock, act) {
    const pictures = { above: svgOf('picture above'), whole: svgOf('picture whole'), own: svgOf('picture own'), end: svgOf('picture end'), lanes: svgOf('lanes') };
    const time = tag('input', { type: 'range', className: 'time', min: '0', step: '0.01', attr: { 'aria-label': 'Moment of the run' }, oninput: e => act.seek(Number(e.target.value)) });
    const clockText = tag('output', { className: 'clock' }), note = tag('span', { className: 'note', attr: { role: 'status' } });
    const buttons = bar(clock, act), captions = tag('ol', { className: 'captions' }), about = tag('div', { className: 'about' }), head = tag('div', { className: 'player-head' });
    if (runs.length > 1) head.append(tag('label', { className: 'choose' }, tag('span', { textContent: 'Run shown' }), chooser(runs, clock.main, 'Run shown', act.show)));
    const setup = tag('p', { className: 'setup' });
    head.append(setup);
    buttons.root.append(tag('div', { className: 'when' }, clockText, note));
    root.replaceChildren(head,
      tag('div', { className: 'pictures' }, pictures.above, tag('div', { className: 'sides' }, pictures.whole, pictures.own, pictures.end), pictures.lanes),
      tag('div', { className: 'drive' }, time, buttons.root),
      tag('div', { className: 'told' }, captions,
        tag('p', { className: 'keys', textContent: 'Drag the slider or the lanes to move through time; the pale part of the slider is the warm-up. Keys: space plays and pauses, arrows step, shift and arrow go from phase to phase.' }), about));
    return { root, pictures, time, clockText, note, play: buttons.play, fill: buttons.fill, captions, about, setup };
  }

  function caption(name, text, jump) {
    return tag('li', { data: { phase: name } }, button(Words.capital(name), 'name', jump, { 'aria-label': `${Words.capital(name)}: show it` }), tag('p', { textContent: text }));
  }

  function pair(root, runs, sides, clock, act) {
    const buttons = bar(clock, act, true), list = sides.map((id, i) => {
      const picture = svgOf('picture above'), name = tag('p', { className: 'name' });
      const choose = chooser(runs, id, i ? 'Run on the right' : 'Run on the left', value => act.side(i, value));
      return { picture, name, root: tag('div', { className: 'side' }, choose, name, picture) };
    });
    root.replaceChildren(tag('div', { className: 'pair-sides' }, ...list.map(s => s.root)), buttons.root);
    return { root, list, play: buttons.play };
  }

  function named(box, run) {
    const verdict = Run.verdict(run);
    box.replaceChildren(tag('b', { textContent: verdict ? `${run.name}: ${verdict}` : run.name }), tag('span', { textContent: run.setup }));
  }

  return { tag, svg: svgOf, player, pair, caption, named };
})();
