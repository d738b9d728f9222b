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
  constructor(parts) {
    const url = URL.createObjectURL(new Blob([`(${engineWorker})();`], { type: 'text/javascript' }));
    this.worker = new Worker(url);
    this.ready = this.#ask({ parts }).finally(() => URL.revokeObjectURL(url));
    this.ready.catch(() => {});
    this.busy = false;
  }

  async run(run, coarse) {
    await this.ready;
    this.busy = true;
    try {
      return JSON.parse((await this.#ask({ run: JSON.stringify(run), coarse })).answer);
    } finally {
      this.busy = false;
    }
  }

  end() {
    this.worker.terminate();
    this.fail?.(obsolete());
  }

  #ask(message) {
    return new Promise((resolve, reject) => {
      this.fail = reject;
      this.worker.onmessage = ({ data }) => (data.error ? reject(new Error(data.error)) : resolve(data));
      this.worker.onerror = event => reject(new Error(event.message || 'The browser stopped the solver.'));
      this.worker.postMessage(message);
    });
  }
}

const obsolete = () => new DOMException('A newer run was asked for.', 'AbortError');

/** Parts of the solver that stand in the page: { name: base64 of gzip }. */
function engineParts() {
  const found = [...document.querySelectorAll('script[type="text/plain"][id^="engine-"]')];
  return Object.fromEntries(found.map(e => [e.id.slice('engine-'.length), e.textContent]));
}

/**
 * The solver of the page. Quick runs have a thread that stays, so that a slider is always answered; fine runs have one of their own, which is
 * ended when a newer call comes, because a run cannot be stopped from outside.
 */
function embeddedSolver() {
  const missing = typeof WebAssembly !== 'object' || typeof Worker !== 'function' || typeof DecompressionStream !== 'function';
  const parts = missing ? {} : engineParts();
  let quick, fine, call = 0, waiting;

  const start = () => {
    if (missing) throw new Error('This browser cannot run the solver; what was computed before is all there.');
    if (!parts['dotnet.js']) throw new Error('This page carries no solver; what was computed before is all there.');
    return new EngineThread(parts);
  };

  const endFine = () => {
    if (fine?.busy) {
      fine.end();
      fine = undefined;
    }
  };

  async function runQuick(run, mine) {
    // One may wait; an older one that waits is given up.
    waiting?.(obsolete());
    if (quick.busy) {
      await new Promise((resolve, reject) => {
        waiting = reject;
        quick.idle = resolve;
      });
    }
    waiting = undefined;
    if (mine !== call) throw obsolete();
    try {
      return await quick.run(run, true);
    } finally {
      quick.idle?.();
      quick.idle = undefined;
    }
  }

  async function run(runInput, { coarse = false } = {}) {
    const mine = ++call;
    endFine();
    await solver.ready;
    if (mine !== call) throw obsolete();
    const answer = coarse ? await runQuick(runInput, mine) : await (fine ??= start()).run(runInput, false);
    if (mine !== call) throw obsolete();
    // The thread for fine runs wakes up while the first quick answer is looked at.
    fine ??= start();
    return answer;
  }

  const solver = { name: 'the solver inside this page', run, ready: undefined };
  try {
    quick = start();
    solver.ready = quick.ready;
  } catch (error) {
    solver.ready = Promise.reject(error);
    solver.ready.catch(() => {});
  }
  return solver;
}
