import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { parentPort, workerData } from 'node:worker_threads';
import type { Told } from './crew.ts';
import { alone, type BuiltWith, type Job } from './one.ts';

/** A thread of its own that builds the series it is told to, one at a time, and hands back what is left of each. */
const port = parentPort!;
const say = (told: Told): void => {
  port.postMessage(told);
};
/** What one series leaves behind is taken away before the next: the threads share the machine's memory. */
setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
const hand = alone(workerData as BuiltWith, (what) => {
  say({ kind: 'tells', what });
});

port.on('message', (job: Job | null) => {
  if (job === null) {
    void hand.close().then(() => {
      port.close();
    });
    return;
  }
  hand.build(job).then(
    (built) => {
      say({ kind: 'built', built });
      collect();
    },
    (trouble: unknown) => {
      say({ kind: 'failed', trouble: plain(trouble) });
    },
  );
});

/** Of an error only its words cross over by themselves. */
function plain(trouble: unknown): object {
  if (!(trouble instanceof Error)) return { message: String(trouble) };
  return Object.assign({}, trouble, { message: trouble.message, stack: trouble.stack });
}
