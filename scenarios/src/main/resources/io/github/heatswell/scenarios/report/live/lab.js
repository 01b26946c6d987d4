/* Long questions: a second copy of the simulation answers them beside the page, which stays free. */

/** What runs in the second copy. */
const WORK = `onmessage = ({ data: { name, text, changes, question } }) => {
  try {
    const { house } = engine.open(name, text);
    const asked = changes.length > 0 ? house.with(changes.map((one) => one[0]), changes.map((one) => one[1])).house : house;
    postMessage({ answer: asked[question]() });
  } catch (fault) {
    postMessage({ fault: fault.message });
  }
};`;

/** Returns what asks a question of a house: the name of what the house is to compute. Who asks the same anew is answered alone. */
export function labOf(script) {
  const address = URL.createObjectURL(new Blob([`const engine = {}; ((exports) => {${script}\n})(engine);\n${WORK}`], { type: 'text/javascript' }));
  const workers = new Map();
  return (question, live, changes = live.changes) => new Promise((answered, failed) => {
    let one = workers.get(question);
    if (one?.busy) {
      one.worker.terminate();
      one = null;
    }
    one ??= { worker: new Worker(address) };
    workers.set(question, one);
    one.busy = true;
    one.worker.onmessage = ({ data }) => {
      one.busy = false;
      if (data.fault === undefined) {
        answered(data.answer);
      } else {
        failed(new Error(data.fault));
      }
    };
    one.worker.onerror = (event) => {
      one.busy = false;
      failed(new Error(event.message));
    };
    one.worker.postMessage({ name: live.name, text: live.text, changes: [...changes], question });
  });
}
