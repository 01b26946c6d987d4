/* Long questions: further copies of the simulation answer them beside the page, which stays free. */

/** What runs in each copy, which keeps the house it was last asked about. */
const WORK = `let known = '';
let house = null;
onmessage = ({ data: { name, text, changes, question, more } }) => {
  try {
    const asked = JSON.stringify([name, text, changes]);
    if (asked !== known) {
      const read = engine.open(name, text).house;
      house = changes.length > 0 ? read.with(changes.map((one) => one[0]), changes.map((one) => one[1])).house : read;
      known = asked;
    }
    postMessage({ answer: house[question](...more) });
  } catch (fault) {
    postMessage({ fault: fault.message });
  }
};`;

const MOST_COPIES = 8;
const PARTS = 25;

/**
 * Sets up the copies, one for each core of the device. `ask` asks a question of a house: the name of what the house is to compute; who
 * asks the same anew is answered alone. `sample` has the copies share two hundred houses, and `ready` starts them before they are needed:
 * what a copy has once computed it computes faster.
 *
 * @param {string} script
 */
export function labOf(script) {
  const address = URL.createObjectURL(new Blob([`const engine = {}; ((exports) => {${script}\n})(engine);\n${WORK}`], { type: 'text/javascript' }));
  const copies = Array.from({ length: Math.min(MOST_COPIES, navigator.hardwareConcurrency || 1) }, () => ({ worker: null, task: null }));
  let waiting = [];
  let started = false;

  function next() {
    for (const copy of copies.filter((one) => one.task === null).slice(0, waiting.length)) {
      copy.worker ??= new Worker(address);
      const task = waiting.shift();
      copy.task = task;
      const ended = (work) => {
        copy.task = null;
        work();
        next();
      };
      copy.worker.onmessage = ({ data }) => ended(() => (data.fault === undefined ? task.answered(data.answer) : task.failed(new Error(data.fault))));
      copy.worker.onerror = (event) => ended(() => task.failed(new Error(event.message)));
      copy.worker.postMessage(task.asked);
    }
  }

  /** @param {import('./house.js').Live} live */
  function put(question, live, changes, more) {
    return new Promise((answered, failed) => {
      waiting.push({ asked: { name: live.name, text: live.text, changes: [...changes], question, more }, answered, failed });
      next();
    });
  }

  /** Drops what was asked before; a long answer that is under way is not waited for. */
  function forget(question) {
    waiting = waiting.filter((task) => task.asked.question !== question);
    for (const copy of copies.filter((one) => one.task?.asked.question === question && one.task.asked.more.length === 0)) {
      copy.worker.terminate();
      Object.assign(copy, { worker: null, task: null });
    }
  }

  return {
    ask: (question, live, changes = live.changes) => {
      forget(question);
      return put(question, live, changes, []);
    },
    sample: async (live) => {
      const { house } = live;
      forget('sampled');
      const parts = await Promise.all(Array.from({ length: PARTS }, (_, part) => put('sampled', live, live.changes, [part, PARTS])));
      return house.band(parts.flatMap((part) => Array.from(part.answers)));
    },
    ready: (live) => {
      if (!started) {
        started = true;
        copies.forEach((_, part) => put('sampled', live, live.changes, [part, PARTS]).catch(() => {})); // whoever asks is told
      }
    },
  };
}
