import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { alone, type BuiltWith, type Crew, type Job, type OneBuilt } from './one.ts';

/** What a thread says. */
export type Told =
  | { readonly kind: 'tells'; readonly what: string }
  | { readonly kind: 'built'; readonly built: OneBuilt }
  | { readonly kind: 'failed'; readonly trouble: object };

/** More threads than this would fill the memory before they save time. */
const mostHands = 4;
/** Room for what is made and dropped again, MB: with the usual 16 a third more time goes into collecting it. */
const young_MB = 64;

/** As many threads as the machine has processors, at most four; this thread alone where there is one, or where the source is run. */
export function crewFor(on: BuiltWith, tell: (what: string) => void, most = mostHands): Crew {
  const place = new URL('./worker.js', import.meta.url);
  const hands = Math.min(most, availableParallelism());
  if (hands < 2 || !existsSync(fileURLToPath(place))) return alone(on, tell);
  const threads = Array.from({ length: hands }, () => threadOf(place, on, tell));
  return {
    hands,
    build: (job) => threads.find(({ free }) => free())!.build(job),
    close: async () => {
      await Promise.all(threads.map(({ close }) => close()));
    },
  };
}

function threadOf(place: URL, on: BuiltWith, tell: (what: string) => void) {
  const worker = new Worker(place, { workerData: on, resourceLimits: { maxYoungGenerationSizeMb: young_MB } });
  let waiting: { readonly done: (built: OneBuilt) => void; readonly failed: (trouble: Error) => void } | null = null;
  const ended = new Promise<void>((resolve) =>
    worker.once('exit', () => {
      resolve();
    }),
  );
  const fail = (trouble: Error): void => {
    waiting?.failed(trouble);
    waiting = null;
  };
  worker.on('error', fail);
  worker.on('exit', () => {
    fail(new Error('A thread of the build ended before its series was written.'));
  });
  worker.on('message', (told: Told) => {
    if (told.kind === 'tells') tell(told.what);
    else if (told.kind === 'failed') fail(Object.assign(new Error(), told.trouble));
    else {
      const mine = waiting;
      waiting = null;
      mine?.done(told.built);
    }
  });
  return {
    free: () => waiting === null,
    build: (job: Job) =>
      new Promise<OneBuilt>((done, failed) => {
        waiting = { done, failed };
        worker.postMessage(job);
      }),
    close: async () => {
      if (waiting === null) worker.postMessage(null);
      else await worker.terminate();
      await ended;
    },
  };
}
