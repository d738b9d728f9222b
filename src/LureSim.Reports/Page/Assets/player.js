// The computed retrieve, played: one clock, its controls, and the pictures that follow it.
//
// Put together by the page builder, all in one module script, in this order:
//   film.js, words.js, phases.js, hull.js, draw.js, lanes.js, player.js, controls.js, engine.js, main.js
// Each file declares one name in front (Film, Words, Phases, Hull, Draw, Lanes, startPlayers), nothing else.
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
//   { replaceRun(id, { film, summary }), play(), pause(), seek(seconds), show(id), time, playing, run }
// replaceRun keeps the clock, and keeps it running.
'use strict';
