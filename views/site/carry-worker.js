// The program's own middle (carry-engine.js) at work: in a worker made of that script's own text, so that the page stays
// alive; where no worker can be had, here. One request at a time; whoever asks anew has no use for the answer before.
(() => {
  const data = window.FISHPLATE_CARRY_DATA;
  let worker;
  let ready = false;
  let inline;
  let last = 0;
  const waiting = new Map();

  const here = () => {
    inline ??= window.FISHPLATE_CARRY().carryEngine(data);
    for (const [ticket, { request, progress, done }] of waiting) {
      waiting.delete(ticket);
      // A breath first, so that the page shows what it is doing.
      setTimeout(() => inline(request, progress).then(done), 30);
    }
  };

  const end = () => {
    worker?.terminate();
    worker = undefined;
    ready = false;
    waiting.clear();
  };

  const start = () => {
    const text = `const carry = (${window.FISHPLATE_CARRY})(); postMessage({ ready: true }); onmessage = event => carry.attend(self, event.data);`;
    const address = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
    try {
      worker = new Worker(address);
    } catch {
      return here();
    }
    const mine = worker;
    worker.onmessage = ({ data: told }) => {
      if (told.ready) {
        ready = true;
        URL.revokeObjectURL(address);
        return;
      }
      const asked = waiting.get(told.ticket);
      if (!asked) return;
      if (told.progress) return asked.progress(told.progress);
      waiting.delete(told.ticket);
      asked.done(told.answer);
    };
    worker.onerror = event => {
      event.preventDefault();
      if (worker !== mine) return;
      if (!ready) return here();
      const asked = [...waiting.values()];
      end();
      const sentence = 'The file was too much for this browser; split it, or have it carried by the program: fishplate carry.';
      for (const { done } of asked) done({ kind: 'refused', sentence });
    };
    worker.postMessage(data);
  };

  window.FISHPLATE_WORKER = {
    end,
    carry: (request, progress) =>
      new Promise(done => {
        if (waiting.size > 0) end();
        const ticket = ++last;
        waiting.set(ticket, { request, progress, done });
        if (inline) return here();
        if (!worker) start();
        worker?.postMessage({ ticket, request });
      }),
  };
})();
