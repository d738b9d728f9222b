// The solver inside the page: the same program, compiled for browsers, in workers made from the page's own text. Nothing is fetched.
// embeddedSolver() -> { name, ready, run(run, { coarse }) }, see docs/page-format.md.

/** What runs inside a worker. Its text becomes the worker, so it must not use anything outside itself. */
function engineWorker() {
  const unpack = async text => {
    const packed = Uint8Array.from(atob(text.trim()), c => c.charCodeAt(0));
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
    return new Uint8Array(await new Response(stream).arrayBuffer());
  };
  const kinds = { js: 'text/javascript', wasm: 'application/wasm', json: 'application/json' };
  const kind = name => kinds[name.split('.').pop()] ?? 'application/octet-stream';

  async function boot(parts) {
    const files = new Map();
    await Promise.all(Object.entries(parts).map(async ([name, text]) => files.set(name, await unpack(text))));
    // A script made from a blob has an address that nothing can be resolved against; any fixed one will do, since nothing is loaded from it.
    const script = name => {
      const text = new TextDecoder().decode(files.get(name)).replaceAll('import.meta.url', '"https://page.invalid/"');
      return URL.createObjectURL(new Blob([text], { type: kind(name) }));
    };
    const { dotnet } = await import(script('dotnet.js'));
    const runtime = await dotnet
      .withResourceLoader((type, name) => {
        if (!files.has(name)) return null;
        if (type === 'dotnetjs') return script(name);
        return Promise.resolve(new Response(files.get(name), { headers: { 'Content-Type': kind(name) } }));
      })
      .withConfig({ disableIntegrityCheck: true })
      .create();
    const { mainAssemblyName } = runtime.getConfig();
    return (await runtime.getAssemblyExports(mainAssemblyName)).LureSim.Browser.Engine;
  }

  let engine;
  // Not self.onmessage: the runtime takes a worker that has one for a thread of its own and waits for ever.
  self.addEventListener('message', async ({ data }) => {
    try {
      if (data.parts) {
        engine = await boot(data.parts);
        self.postMessage({ awake: true });
      } else {
        self.postMessage({ answer: engine.Run(data.run, data.coarse) });
      }
    } catch (error) {
      self.postMessage({ error: String(error?.message ?? error) });
    }
  });
}

/** One worker: awake once, then one run at a time. */
class EngineThread {
  constructor(parts, first) {
    const url = URL.createObjectURL(new Blob([`(${engineWorker})();`], { type: 'text/javascript' }));
    // Not a module: a page that was opened from a disk may not start one from a blob.
    this.worker = new Worker(url);
    this.busy = false;
    this.ready = this.#wake(parts, first).finally(() => URL.revokeObjectURL(url));
    this.ready.catch(() => {});
  }

  async run(run, coarse) {
    this.busy = true;
    try {
      return JSON.parse((await this.#ask({ run: JSON.stringify(run), coarse })).answer);
    } finally {
      this.busy = false;
    }
  }

  /** A short run of which nobody waits for the answer: the browser goes on compiling what is used most. */
  async warm(run) {
    await this.#ask({ run: JSON.stringify({ ...run, task: { ...run.task, durationS: 2 } }), coarse: true });
  }

  end() {
    this.worker.terminate();
    this.fail?.(obsoleteRun());
  }

  async #wake(parts, first) {
    try {
      await this.#ask({ parts });
      // The first second of the first run compiles what is used most; no slider should wait for that.
      if (first) await this.warm(first);
    } catch (error) {
      throw error.name === 'AbortError' ? error : new Error(`The solver did not start (${error.message}). ${stillThere}`);
    }
  }

  #ask(message) {
    return new Promise((resolve, reject) => {
      this.fail = reject;
      this.worker.onmessage = ({ data }) => (data.error ? reject(new Error(data.error)) : resolve(data));
      this.worker.onerror = event => {
        this.broken = true;
        reject(new Error(event.message || 'the browser stopped it'));
      };
      this.worker.postMessage(message);
    });
  }
}

const stillThere = 'What was computed before is all there.';
const obsoleteRun = () => new DOMException('A newer run was asked for.', 'AbortError');

/** Parts of the solver that stand in the page: { name: base64 of gzip }. */
function engineParts() {
  const found = [...document.querySelectorAll('script[type="text/plain"][id^="engine-"]')];
  return Object.fromEntries(found.map(e => [e.id.slice('engine-'.length), e.textContent]));
}

/** The run of the page that its sliders change, to warm up with; a page need not have one. */
function firstRun() {
  const data = document.getElementById('data');
  return data ? JSON.parse(data.textContent).run : undefined;
}

/**
 * The solver of the page. Quick runs have a thread that stays, so that a slider is always answered; fine runs have one of their own, which is
 * ended when a newer call comes, because a run cannot be stopped from outside. A call that is overtaken by a newer one fails with an
 * AbortError; a solver that cannot run fails with words for the reader.
 */
function embeddedSolver() {
  let parts, first, quick, fine, giveUp;
  let call = 0;

  const start = () => new EngineThread(parts, first);

  async function runQuick(run, mine) {
    // One may wait for the thread; one that waited before is given up.
    giveUp?.(obsoleteRun());
    giveUp = undefined;
    if (quick.busy) {
      await new Promise((resolve, reject) => {
        giveUp = reject;
        quick.idle = resolve;
      });
    }
    if (mine !== call) throw obsoleteRun();
    if (quick.broken) quick = await awake(start());
    const thread = quick;
    try {
      return await thread.run(run, true);
    } finally {
      thread.idle?.();
      thread.idle = undefined;
    }
  }

  async function runFine(run, mine) {
    if (!fine || fine.broken) fine = start();
    const thread = await awake(fine);
    if (mine !== call) throw obsoleteRun();
    return await thread.run(run, false);
  }

  const awake = thread => thread.ready.then(() => thread);

  async function run(input, { coarse = false } = {}) {
    const mine = ++call;
    if (fine?.busy) {
      fine.end();
      fine = undefined;
    }
    await solver.ready;
    if (mine !== call) throw obsoleteRun();
    const answer = await (coarse ? runQuick : runFine)(input, mine);
    if (mine !== call) throw obsoleteRun();
    return answer;
  }

  // While nobody asks: short runs, so that whoever comes waits for a fifth of a second at most, then the thread for fine runs. Once it is
  // overtaken it wakes up anew when a fine run is due, and not beside quick ones, which it would slow down.
  async function warmUp() {
    for (let i = 0; first && i < 6; i++) {
      await new Promise(done => setTimeout(done, 50));
      if (call > 0 || quick.busy) return;
      quick.busy = true;
      try {
        await quick.warm(first);
      } finally {
        quick.busy = false;
        quick.idle?.();
        quick.idle = undefined;
      }
    }
    if (call === 0) fine ??= start();
  }

  async function wake() {
    const can = typeof WebAssembly === 'object' && typeof Worker === 'function' && typeof DecompressionStream === 'function';
    if (!can) throw new Error(`This browser cannot run the solver. ${stillThere}`);
    parts = engineParts();
    first = firstRun();
    if (!parts['dotnet.js']) throw new Error(`This page carries no solver. ${stillThere}`);
    quick = start();
    await quick.ready;
  }

  const solver = { name: 'The solver inside this page', ready: wake(), run };
  solver.ready.then(warmUp).catch(() => {});
  return solver;
}
