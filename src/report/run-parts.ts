import type { Figure } from '../ledger/figure.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Run } from '../trial/run.ts';
import {
  articleWords,
  classWord,
  litresWords,
  cited,
  citedValue,
  doubtOf,
  figureWords,
  tiltWords,
  titled,
  toWorking,
} from './cite.ts';
import { runStamps } from './amended.ts';
import { dateWords, momentWords } from './dates.ts';
import { doseNote, isDose } from './dose.ts';
import { largestCauses } from './doubt.ts';
import { findingsSection } from './finding-words.ts';
import { noteSection } from './note-fields.ts';
import type { Banner, Block, MarginNote, Page, Section, Span } from './page.ts';
import { link, listNote, prose, row, section, tableBlock } from './spans.ts';
import { derivedOf, type View } from './view.ts';

/** What the four kinds of run sheet share; each is composed by hand from these. */
export interface Sheet {
  readonly lead: readonly Span[];
  readonly sections: readonly (Section | null)[];
}

export function runPage(view: View, run: Run, sheet: Sheet): Page {
  const title = runTitle(view, run);
  return {
    kind: 'run',
    path: `${view.base}runs/${run.id}/`,
    title,
    description: `Run sheet ${run.id}: ${run.trial} of ${title}, ${dateWords(run.started)}.`,
    whereabouts: [
      link(view.base, view.series.title),
      ` · run sheet ${run.id} · ${run.trial} · ${dateWords(run.started)} · rig state ${run.rigState} · ${run.status}`,
    ],
    lead: sheet.lead,
    banners: [...banners(view, run), ...runStamps(view, run.id)],
    series: view.series.id,
    sections: [...sheet.sections, doseNote(view, run), findingsSection(view, run.id), noteSection(view, run)].filter(
      (s) => s !== null,
    ),
  };
}

/** "P4 shroud, 2.40 L of O1" */
export function runTitle(view: View, run: Run): string {
  const cell = derivedOf(view, run.id)?.cell;
  const article = articleWords(view, run.article);
  return cell === undefined
    ? `${article} with ${run.oil}`
    : `${article}, ${litresWords(cell)} of ${run.oil}${tiltWords(cell)}`;
}

/** Why no figure is made of a run, or null when it counts. */
export function notCounted(view: View, run: Run): string | null {
  if (run.status === 'set aside') return `This run is set aside: ${run.statusReason ?? 'no reason was written'}.`;
  if (run.status === 'superseded')
    return `This run is superseded${run.statusReason === null ? '' : `: ${run.statusReason}`}.`;
  if (run.status === 'draft') return 'This run is a draft: it is listed, and no figure is made of it.';
  const derived = derivedOf(view, run.id);
  if (derived === undefined) return 'No figure is made of this run: its note or its logger file could not be used.';
  return derived.leftOut === null ? null : `No figure is made of this run: ${derived.leftOut}.`;
}

/** The finding of the run in one sentence, or why there is none. */
export const leadOf = (view: View, run: Run, lead: () => readonly Span[]): readonly Span[] => {
  const why = notCounted(view, run);
  return why === null ? lead() : [why.replace(/([.!?])\.$/, '$1')];
};

export const runLink = (view: View, id: string): Span =>
  view.runs.some((run) => run.id === id) ? link(`${view.base}runs/${id}/`, id) : id;

function banners(view: View, run: Run): Banner[] {
  const cap = view.findings.some((finding) => finding.code === 'cap-exceeded' && finding.about?.run === run.id);
  const why = notCounted(view, run);
  return [
    run.releasedBy === null
      ? {
          code: 'release-not-recorded',
          text: ['Release not recorded: the note names nobody who released this run to power.'],
        }
      : null,
    cap
      ? { code: 'cap-exceeded', text: ['Cap exceeded: the sump passed the cap of the window that this article wears.'] }
      : null,
    why === null || run.status === 'draft'
      ? null
      : { code: 'left-out', text: ['Left out: nothing on this sheet counts in a standing.'] },
  ].filter((banner) => banner !== null);
}

export function beforePower(view: View, run: Run): MarginNote {
  const by = view.house && run.releasedBy !== null ? ` by ${run.releasedBy}` : '';
  const on = run.releasedOn === null ? '' : `, ${momentWords(run.releasedOn)}`;
  return {
    name: 'Before power.',
    text: [
      run.releasedBy === null ? 'Release not recorded. ' : `Release recorded${by}${on}. `,
      'The rows for this kind of run stand beside its conditions. ',
      link('cautions/', 'All cautions'),
    ],
  };
}

/** Every figure of the run, with how far it may be off, its class and its working. */
export function givesSection(
  view: View,
  run: Run,
  skip: (figure: Figure) => boolean,
  margin: readonly (MarginNote | null)[],
  before: readonly Block[] = [],
): Section {
  const figures = (view.figuresOf.get(run.id) ?? []).filter((figure) => !isDose(figure) && !skip(figure));
  const shared = sharedNotes(figures);
  return section(
    'what-it-gives',
    'What it gives',
    [
      ...before,
      figures.length === 0
        ? before.length === 0
          ? prose('Nothing yet.')
          : null
        : tableBlock(
            'figures',
            ['wide figure', 'number value', 'number 95 %', 'class', ''],
            figures.map((figure) =>
              row(
                withNotes(figure, shared),
                citedValue(view, figure),
                doubtOf(figure),
                classWord(figure),
                toWorking(view, figure),
              ),
            ),
          ),
    ],
    shared.length === 0 ? margin : [...margin, listNote('True of several figures.', shared)],
  );
}

/** The largest causes behind one figure, with their share of the variance. */
export function howSure(view: View, figure: Figure | undefined): MarginNote | null {
  const causes = largestCauses(view, figure);
  if (figure === undefined || causes === null) return null;
  return { name: 'How sure.', text: [`${titled(figure)}: `, cited(view, figure), `. Of its doubt, ${causes}.`] };
}

export function remarksNote(derived: DerivedRun | undefined): MarginNote | null {
  if (derived === undefined || derived.remarks.length === 0) return null;
  return listNote('Seen in it.', derived.remarks);
}

/** Notes that several figures of a sheet share stand once, in the margin. */
function sharedNotes(figures: readonly Figure[]): readonly string[] {
  const notes = figures.flatMap((figure) => figure.notes);
  return [...new Set(notes.filter((note) => notes.filter((other) => other === note).length > 2))];
}

function withNotes(figure: Figure, shared: readonly string[]): string {
  const own = figure.notes.filter((note) => !shared.includes(note));
  return own.length === 0 ? figureWords(figure) : `${figureWords(figure)} (${own.join('; ')})`;
}
