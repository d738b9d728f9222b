// Three stills of one twitch beside their captions, under them the lanes with their moments marked: for paper, and where motion is unwelcome.
'use strict';
const Stills = (() => {
  const W = 640;

  // Pull near its end, turn in its middle, and where the slide ends.
  function moments(twitch) {
    const of = name => twitch.phases.find(p => p.name === name), at = (p, share) => p && { phase: p, t: p.from + (p.to - p.from) * share };
    const last = of('coast') ?? of('wait') ?? of('tow');
    return [at(of('pull'), 0.85), at(of('turn'), 0.6), at(last, 0.9)].filter(Boolean);
  }

  function make(root, run, words) {
    const twitch = run.phases.twitches[run.phases.typical], list = moments(twitch), H = Math.min(Above.height(run, W), 250);
    const figures = list.map(({ phase, t }, i) => {
      const svg = Stage.svg('picture above'), { tag } = Stage;
      Above.make(svg, run, W, H, words, true).at(t);
      return tag('figure', {}, svg, tag('figcaption', {}, tag('b', { textContent: `${i + 1}. ${Words.capital(phase.name)}` }),
        tag('span', { textContent: Captions.of(run.film, twitch, phase, words) })));
    });
    const lanes = Stage.svg('lanes');
    Lanes.make(lanes, run, W + 60, words, { marks: list.map(m => m.t), still: true }).at(twitch.from);
    root.replaceChildren(...figures, lanes);
  }

  return { make };
})();
