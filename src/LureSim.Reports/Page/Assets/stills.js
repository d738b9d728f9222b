// Three stills of one twitch beside their captions, under them the lanes with their moments marked: for paper, and where motion is unwelcome.
'use strict';
const Stills = (() => {
  const W = 500;

  // Pull, turn, and what follows them.
  function moments(film, twitch) {
    const of = name => twitch.phases.find(p => p.name === name);
    return [of('pull'), of('turn'), of('coast') ?? of('wait') ?? of('tow')].filter(Boolean).map(phase => ({ phase, t: Phases.best(film, phase) }));
  }

  function make(root, run, words) {
    const twitch = run.phases.twitches[run.phases.typical], list = moments(run.film, twitch), H = Math.min(Above.height(run, W), 250);
    const figures = list.map(({ phase, t }, i) => {
      const svg = Stage.svg('picture above'), { tag } = Stage;
      Above.make(svg, run, W, H, words, true).at(t);
      return tag('figure', {}, svg, tag('figcaption', {}, tag('b', { textContent: `${i + 1}. ${Words.capital(phase.name)}` }),
        tag('span', { textContent: Captions.of(run.film, twitch, phase, words) })));
    });
    const lanes = Stage.svg('lanes');
    Lanes.make(lanes, run, 680, words, { marks: list.map(m => m.t) }).at(twitch.from);
    root.replaceChildren(...figures, lanes, Stage.tag('p', { className: 'legend', textContent: `${Captions.legend} ${Captions.thinned(run.film, words)}` }));
  }

  return { make };
})();
