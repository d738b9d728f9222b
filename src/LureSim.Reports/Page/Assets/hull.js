// The lure as a solid: its sections turned by heading, pitch and roll and looked at from any side.
'use strict';
const Hull = (() => {
  const around = 28;                                     // points of a section
  const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

  // Body axes in the world: forward, left, up.
  function frame(heading, pitch, roll) {
    const [sh, ch] = [Math.sin(heading), Math.cos(heading)], [sp, cp] = [Math.sin(pitch), Math.cos(pitch)], [sr, cr] = [Math.sin(roll), Math.cos(roll)];
    const level = [-sh, ch, 0], upright = [-ch * sp, -sh * sp, cp];
    return {
      forward: [ch * cp, sh * cp, sp],
      left: level.map((v, i) => cr * v + sr * upright[i]),
      up: level.map((v, i) => -sr * v + cr * upright[i]),
      ahead: [ch, sh, 0], level,
    };
  }

  // Points of the back and of the belly, from the centre of gravity, body axes.
  function shell(hull) {
    const back = [], belly = [], [cx, cz] = hull.centre;
    for (const [x, b, c, z] of hull.stations)
      for (let i = 0; i < around; i++) {
        const a = 2 * Math.PI * i / around, p = [x - cx, b * Math.cos(a), (z ?? 0) + c * Math.sin(a) - cz];
        if (Math.sin(a) > -0.01) back.push(p);
        if (Math.sin(a) < 0.01) belly.push(p);
      }
    return { back, belly };
  }

  function prepare(hull) {
    const [cx, cz] = hull.centre, at = share => {
      const x = share * hull.length;
      return hull.stations.reduce((best, s) => Math.abs(s[0] - x) < Math.abs(best[0] - x) ? s : best);
    };
    const [ex, eb, ec, ez = 0] = at(0.34), place = ([x, z]) => [x - cx, 0, z - cz];
    return {
      ...hull, ...shell(hull),
      eyes: [1, -1].map(side => ({ at: [ex - cx, side * eb * 0.85, ez + ec * 0.45 - cz], out: [0.2, side * 0.85, 0.45] })),
      tieAt: place(hull.tie), hooksAt: (hull.hooks ?? []).map(place),
      widest: Math.max(...hull.stations.map(s => Math.max(s[1], s[2]))), nose: hull.length / 2 - cx,
    };
  }

  // Smallest convex outline of points on the screen.
  function outline(points) {
    const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
    const chain = row => {
      const kept = [];
      for (const p of row) {
        while (kept.length > 1) {
          const [a, b] = kept.slice(-2);
          if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 0) break;
          kept.pop();
        }
        kept.push(p);
      }
      kept.pop();
      return kept;
    };
    return [...chain(sorted), ...chain(sorted.toReversed())];
  }

  const path = points => `M${points.map(p => `${p[0].toFixed(1)} ${p[1].toFixed(1)}`).join('L')}z`;

  // The lure on a screen whose directions are right and up (world vectors), k pixels a metre, centre of gravity at the origin.
  function view(solid, axes, right, up, k) {
    const toward = [right[1] * up[2] - right[2] * up[1], right[2] * up[0] - right[0] * up[2], right[0] * up[1] - right[1] * up[0]];
    const rows = [right, up].map(v => [dot(axes.forward, v), dot(axes.left, v), dot(axes.up, v)]);
    const screen = p => [k * dot(rows[0], p), -k * dot(rows[1], p)];
    const depth = [dot(axes.forward, toward), dot(axes.left, toward), dot(axes.up, toward)];
    const back = outline(solid.back.map(screen)), belly = outline(solid.belly.map(screen));
    return {
      outline: path(outline([...back, ...belly])), back: path(back), belly: path(belly), backNear: depth[2] > 0,
      eyes: solid.eyes.map(e => ({ at: screen(e.at), seen: dot(e.out, depth) > 0.12 })),
      tie: screen(solid.tieAt), hooks: solid.hooksAt.map(screen),
    };
  }

  const above = [[1, 0, 0], [0, 1, 0]];
  return { frame, prepare, view, above };
})();
