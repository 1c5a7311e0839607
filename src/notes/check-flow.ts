import type { Finding } from '../finding/finding.ts';
import { rpmText } from '../trial/cue.ts';
import type { Clip, Observation, StepName } from '../trial/flow.ts';
import type { Plan } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';
import type { MediaFile, SourceFile } from '../trial/series.ts';
import { namesThatTell } from './captions-name.ts';
import { readCaptions, repeats } from './captions.ts';
import { checkClips, type CodesTaken } from './check-clips.ts';
import { checkStills } from './check-stills.ts';
import { observationLeftOut, sampleLeftOut, stillLeftOut } from './flow-fields.ts';
import { foundAt, type Gathered } from './gather.ts';
import { isBareName, nearestSpare } from './inside.ts';
import type { Told } from './note.ts';
import { leftOutOf, partAt, type Parts } from './parts.ts';
import { plannedSpeed } from './step.ts';
import { captionsMissing, captionsTwice } from './texts-captions.ts';
import { observedTwice, observersLeftOut, observersMany, stepUnplanned } from './texts-flow.ts';
import { captionsUnread, notBare } from './texts-media.ts';

export interface FlowAround {
  readonly folder: string;
  readonly files: readonly SourceFile[];
  /** Null when nobody looked which pictures and clips there are. */
  readonly media: readonly MediaFile[] | null;
  readonly plan: Plan | null;
}

/** The flow parts of every run against the plan, the files and each other. What is wrong is left out alone; the run stands. */
export function withFlow(runs: Gathered<Run>, around: FlowAround): Gathered<Run> {
  const records = new Map<string, Run>();
  const findings = [...runs.findings];
  const taken = {
    codes: new Set<string>(),
    runs: [...runs.records.keys(), ...runs.spoilt].map((id) => id.toLowerCase()),
    captions: new Set<string>(),
    named: new Set([...runs.records.values()].flatMap(filesNamed)),
  };
  const media = around.media && new Map(around.media.map((file) => [file.path, file]));
  for (const [id, run] of runs.records) {
    const read = readFlow(run, { ...around, media, taken });
    records.set(id, read.run);
    findings.push(...read.findings.map((f) => ({ ...f, about: { run: id } })));
  }
  return { ...runs, records, findings };
}

const mostObservers = 12;

const filesNamed = ({ clips, stills }: Run): string[] => [
  ...clips.flatMap(({ file, captions }) => (captions === null ? [file] : [file, captions])),
  ...stills.map(({ file }) => file),
];

interface Around extends Omit<FlowAround, 'media'> {
  readonly media: ReadonlyMap<string, MediaFile> | null;
  readonly taken: CodesTaken & { readonly captions: Set<string> };
}

function readFlow(run: Run, around: Around): { readonly run: Run; readonly findings: readonly Finding[] } {
  const { folder, media, taken, plan } = around;
  const clips = checkClips(run, `${folder}/runs/`, { media, taken });
  const pictures = checkStills(run, `${folder}/pictures/`, { media, named: taken.named });
  const stills = planned(pictures.kept, plan, (still, told) => leftOutOf(run, still, 'step', told, stillLeftOut));
  const noted = planned(run.observations, plan, (o, told) => [{ ...told, place: o.place, effect: observationLeftOut }]);
  const once = onlyOnce(noted.kept);
  const captioned = withCaptions(run, once.kept, around);
  const seen = byFew(captioned.kept);
  const sample = planned(run.airSample ? [run.airSample] : [], plan, (_, told) => [
    { ...foundAt(run, 'air-sample.step', told), effect: sampleLeftOut },
  ]);
  const parts = [clips, pictures, stills, noted, once, captioned, seen, sample];
  return {
    run: {
      ...run,
      clips: clips.kept,
      stills: stills.kept,
      observations: seen.kept,
      airSample: sample.kept[0] ?? null,
    },
    findings: [...parts.flatMap((part) => part.findings), ...namesThatTell(run, seen.kept)],
  };
}

/** Each part at the speed of the plan that is meant; one whose step is not planned is left out. */
function planned<T extends { readonly step: StepName }>(
  list: readonly T[],
  plan: Plan | null,
  tell: (part: T, told: Told) => readonly Finding[],
): Parts<T> {
  if (plan === null) return { kept: list, findings: [] };
  const findings: Finding[] = [];
  const kept = list.flatMap((part): T[] => {
    const { outputSpeed_rad_s: speed, direction } = part.step;
    const near = plannedSpeed(speed, plan.steps_rad_s);
    const name = (rad_s: number): string => `${rpmText(rad_s)} rpm ${direction}`;
    if (near?.planned) return [{ ...part, step: { ...part.step, outputSpeed_rad_s: near.speed_rad_s } }];
    findings.push(...tell(part, stepUnplanned(name(speed), near && name(near.speed_rad_s))));
    return [];
  });
  return { kept, findings };
}

function onlyOnce(list: readonly Observation[]): Parts<Observation> {
  const kept: Observation[] = [];
  const findings: Finding[] = [];
  for (const one of list)
    if (repeats(one, kept)) findings.push({ ...observedTwice(), place: one.place, effect: observationLeftOut });
    else kept.push(one);
  return { kept, findings };
}

/** Every two observers are compared with each other, so that only so many can be; told once, at the first of the others. */
function byFew(list: readonly Observation[]): Parts<Observation> {
  const alone = list.filter(({ pass }) => pass === 'first').map(({ observer }) => observer);
  const few = new Set([...new Set(alone)].slice(0, mostObservers));
  const other = list.find((one) => one.pass === 'first' && !few.has(one.observer));
  if (other === undefined) return { kept: list, findings: [] };
  return {
    kept: list.filter((one) => one.pass === 'joint' || few.has(one.observer)),
    findings: [{ ...observersMany(mostObservers), place: other.place, effect: observersLeftOut }],
  };
}

/** Observations of the note, and after them those of the captions files of its clips. */
function withCaptions(run: Run, noted: readonly Observation[], around: Around): Parts<Observation> {
  const observations = [...noted];
  const findings: Finding[] = [];
  for (const clip of run.clips) {
    if (clip.captions === null) continue;
    const file = captionsFile(run, clip, clip.captions, around);
    if ('told' in file) findings.push(file.told);
    else {
      const read = readCaptions(file.file, {
        run: run.id,
        clip,
        steps_rad_s: around.plan?.steps_rad_s ?? null,
        before: observations,
      });
      observations.push(...read.observations);
      findings.push(...read.findings);
    }
  }
  return { kept: observations, findings };
}

/** The file beside the note; it belongs to one clip. */
function captionsFile(
  run: Run,
  clip: Clip,
  name: string,
  { folder, files, taken }: Around,
): { readonly file: SourceFile } | { readonly told: Finding } {
  const home = `${folder}/runs/`;
  const tell = (told: Told) => ({ told: { ...partAt(run, clip, 'captions', told), effect: captionsUnread } });
  if (!isBareName(name)) return tell(notBare(name, home, 'captions: F-01.vtt'));
  const file = files.find((f) => f.path === home + name);
  if (!file) {
    const paths = files.flatMap(({ path }) => (/\.vtt$/i.test(path) ? [path] : []));
    return tell(captionsMissing(name, home + name, nearestSpare(name, home, { paths, named: taken.named })));
  }
  if (taken.captions.has(name)) return tell(captionsTwice(name));
  taken.captions.add(name);
  return { file };
}
