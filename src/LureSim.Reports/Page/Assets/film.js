// A film of one run: channels of 16-bit steps, read at any time by straight lines between them.
'use strict';
const Film = (() => {
  function numbers(base64) {
    const bytes = Uint8Array.from(atob(base64), c => c.charCodeAt(0)), view = new DataView(bytes.buffer);
    return Int16Array.from({ length: bytes.length >> 1 }, (_, i) => view.getInt16(2 * i, true));
  }

  function channel(stored) {
    const steps = numbers(stored.i16);
    return Float64Array.from(steps, n => stored.offset + stored.unit * n);
  }

  // Place of a time in a row of equal steps: the step before it and the share of the way to the next one.
  function place(time, step, count) {
    const at = Math.min(Math.max(time / step, 0), count - 1), before = Math.min(Math.floor(at), Math.max(count - 2, 0));
    return [before, at - before];
  }

  function open(film) {
    const values = Object.fromEntries(Object.entries(film.channels).map(([name, c]) => [name, channel(c)]));
    const stepOf = name => film.channels[name].step_s ?? film.step_s;
    const end = film.step_s * (film.count - 1), line = film.line, nodes = line && numbers(line.i16);

    function at(name, time) {
      const all = values[name], [i, share] = place(time, stepOf(name), all.length);
      return all.length > 1 ? all[i] + (all[i + 1] - all[i]) * share : all[0];
    }

    // The line from rod tip to tie, [[x, y, z], ...] in m.
    function nodesAt(time) {
      if (!line) return ['tip', 'nose'].map(end => ['x', 'y', 'z'].map(axis => at(`${end}_${axis}`, time)));
      const [i, share] = place(time, line.step_s, line.count), size = 3 * line.points, from = i * size, next = line.count > 1 ? size : 0;
      return Array.from({ length: line.points }, (_, p) => [0, 1, 2].map(axis => {
        const k = from + 3 * p + axis;
        return line.offset[axis] + line.unit * (nodes[k] + (nodes[k + next] - nodes[k]) * share);
      }));
    }

    function range(name, from = 0, to = end) {
      const all = values[name], step = stepOf(name);
      let low = Infinity, high = -Infinity;
      for (let i = Math.ceil(from / step - 1e-6); i <= Math.min(Math.floor(to / step + 1e-6), all.length - 1); i++) {
        low = Math.min(low, all[i]);
        high = Math.max(high, all[i]);
      }
      return [low, high];
    }

    return { end, step: film.step_s, stepOf, at, nodesAt, range, has: name => name in values, error: name => film.channels[name].error, lineError: line?.error };
  }

  return { open };
})();
