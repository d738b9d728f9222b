// The served page's way to the program on this machine: one run, whole studies, a sign of life. Only the served page carries this file.
// liveSolver() -> { name, ready, run(run, { coarse }) }, as embeddedSolver() of engine.js. startStudies(root, sets) fills the part with buttons.

const Live = (() => {
  const alive = 15000;
  // The secret stands behind # in the address, once; it is taken out of sight and of the history.
  const token = location.hash.slice(1);
  history.replaceState(null, '', location.pathname);

  async function ask(path, body, signal) {
    let answer;
    try {
      answer = await fetch(path, { method: 'POST', body, signal, headers: { 'Content-Type': 'application/json', 'X-LureSim-Token': token } });
    } catch (error) {
      if (error.name === 'AbortError') throw error;
      throw new Error('The program on this machine does not answer any more. Start it again: luresim live.');
    }
    if (!answer.ok) throw new Error(await answer.text());
    return answer;
  }

  setInterval(() => ask('/alive', '{}').catch(() => {}), alive);

  async function* lines(answer) {
    const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
    for (let rest = ''; ;) {
      const { done, value } = await reader.read();
      const parts = (rest + (value ?? '')).split('\n');
      rest = parts.pop();
      for (const part of parts) yield JSON.parse(part);
      if (done) return;
    }
  }

  return { ask, lines };
})();

/** Runs on the machine's own program; a newer one ends the one before. */
function liveSolver() {
  let newest = null;
  return {
    name: 'The program on this machine',
    ready: Promise.resolve(),
    async run(run, { coarse } = {}) {
      newest?.abort();
      const own = newest = new AbortController();
      const began = performance.now(), answer = await (await Live.ask(coarse ? '/run?coarse=1' : '/run', JSON.stringify(run), own.signal)).json();
      return { ...answer, summary: answer.summary && { pattern: answer.pattern, ...answer.summary }, seconds: (performance.now() - began) / 1000 };
    },
  };
}

/** Buttons for whole studies. `sets()` gives the texts key=value that the sliders stand at. */
function startStudies(root, sets) {
  const studies = [
    ['cadence', 'Which rhythms walk'], ['cast', 'How far it casts'], ['retrieve', 'This retrieve in full'], ['trim', 'How it floats'], ['pool', 'What it does in a pool'],
  ];
  const make = (tag, attributes = {}, ...inside) => {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
    element.append(...inside);
    return element;
  };
  const buttons = studies.map(([study, words]) => {
    const button = make('button', { type: 'button' }, words);
    button.onclick = () => begin({ study, set: sets() });
    return button;
  });
  const vary = make('input', { type: 'text', id: 'vary', spellcheck: 'false', value: 'retrieve.stroke=10 cm:30 cm:5' });
  const sweep = make('button', { type: 'submit' }, 'Sweep');
  const form = make('form', { class: 'sweep' }, make('label', { for: 'vary' }, 'Or vary one value: key=from:to:count'), vary, sweep);
  form.onsubmit = event => {
    event.preventDefault();
    begin({ study: 'sweep', set: sets(), vary: vary.value });
  };
  const stop = make('button', { type: 'button', 'data-off': '' }, 'Stop');
  const bar = make('progress', { max: '100', 'data-off': '', 'aria-label': 'How far the study is' });
  const news = make('p', { role: 'status' });
  const answer = make('div', { class: 'answer' });
  root.replaceChildren(make('div', { class: 'bar' }, ...buttons), form, make('div', { class: 'news' }, bar, news, stop), answer);

  let running = null;
  stop.onclick = () => running?.abort();

  const say = (words, fault = false) => {
    news.textContent = words;
    news.toggleAttribute('data-fault', fault);
  };

  const working = on => {
    for (const element of [bar, stop]) element.toggleAttribute('data-off', !on);
    bar.removeAttribute('value');
  };

  async function begin(request) {
    running?.abort();
    const own = running = new AbortController();
    working(true);
    say('computing …');
    try {
      for await (const line of Live.lines(await Live.ask('/study', JSON.stringify(request), own.signal))) tell(line);
    } catch (error) {
      if (own !== running) return;
      if (error.name === 'AbortError') say('stopped'); else say(error.message, true);
    }
    if (own === running) working(false);
  }

  function tell(line) {
    if (line.progress) {
      say(line.progress);
      const share = /(\d+) %/.exec(line.progress);
      if (share) bar.value = +share[1];
      return;
    }
    say(line.fault ?? 'done', Boolean(line.fault));
    if (line.text == null) return;
    answer.replaceChildren(make('pre', { tabindex: '0' }, line.text), ...line.pictures.map(picture => {
      const url = URL.createObjectURL(new Blob([picture.svg], { type: 'image/svg+xml' }));
      const image = make('img', { src: url, alt: picture.name.replaceAll('_', ' '), loading: 'lazy' });
      image.onload = () => URL.revokeObjectURL(url);
      return image;
    }));
  }
}
