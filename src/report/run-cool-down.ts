import type { Run } from '../trial/run.ts';
import type { Block, MarginNote, Page, Span, TraceData } from './page.ts';
import { cited, runFigures } from './cite.ts';
import { conditionsSection, rawFileNote } from './run-conditions.ts';
import { beforePower, givesSection, howSure, leadOf, remarksNote, runLink, runPage } from './run-parts.ts';
import { section } from './spans.ts';
import { excludedIn, pointsOf, traceNamed, traceTable } from './traces.ts';
import { derivedOf, type View } from './view.ts';

/** A cool-down after the stop: its time constant, and the shed of still oil, which is not the running value. */
export function coolDownPage(view: View, run: Run): Page {
  const [constant] = runFigures(view, run.id, 'time-constant');
  return runPage(view, run, {
    lead: leadOf(view, run, () => coolDownLead(view, run)),
    sections: [
      section('picture', null, [coolDownChart(view, run)], [beforePower(view, run), notRunning(view, run)]),
      givesSection(view, run, () => false, [
        howSure(view, constant),
        remarksNote(derivedOf(view, run.id)),
        rawFileNote(view, run),
      ]),
      conditionsSection(view, run),
    ],
  });
}

function coolDownLead(view: View, run: Run): Span[] {
  const [constant] = runFigures(view, run.id, 'time-constant');
  const [shed] = runFigures(view, run.id, 'shed-rest');
  if (constant === undefined && shed === undefined) return ['No time constant could be formed from its curve.'];
  return [
    'After the stop the sump falls towards ambient',
    ...(constant ? [' with a time constant of ', cited(view, constant)] : []),
    ...(shed ? [', shedding ', cited(view, shed), ' at rest'] : []),
    '; this is not what it sheds while running.',
  ];
}

/** Shed at rest and shed while running stand side by side, never merged. */
function notRunning(view: View, run: Run): MarginNote {
  const [running] = run.fromRun === null ? [] : runFigures(view, run.fromRun, 'shed');
  return {
    name: 'Not the running value.',
    text: [
      `With ${run.gearState === 'slow-roll' ? 'slowly rolling' : 'still'} gears the oil is hardly stirred`,
      ...(run.fromRun === null ? ['.'] : ['. It follows ', runLink(view, run.fromRun)]),
      ...(running ? [', which shed ', cited(view, running), ' while running.'] : run.fromRun === null ? [] : ['.']),
    ],
  };
}

function coolDownChart(view: View, run: Run): Block | null {
  const derived = derivedOf(view, run.id);
  const sump = traceNamed(derived, 'sump');
  if (derived === undefined || sump === undefined) return null;
  const mark = view.marks.get(run.article) ?? 0;
  const skin = traceNamed(derived, 'skin');
  const ambient = traceNamed(derived, 'ambient');
  const lines: TraceData['lines'] = [
    { label: `${run.article} sump`, mark, role: 'main', points: pointsOf(sump) },
    ...(skin ? [{ label: `${run.article} skin`, mark, role: 'second' as const, points: pointsOf(skin) }] : []),
    ...(derived.fitted ? [{ label: 'fit', mark, role: 'fit' as const, points: pointsOf(derived.fitted) }] : []),
    ...(ambient ? [{ label: 'ambient', mark, role: 'second' as const, points: pointsOf(ambient) }] : []),
  ];
  return {
    kind: 'chart',
    chart: {
      id: 'sump',
      title: `Sump temperature of ${run.id} after the stop`,
      alternative: `Temperature in °C against minutes after the stop: ${lines.map(({ label }) => label).join(', ')}. The table below holds points of the same lines.`,
      caption: ['Time zero is the gears at standstill.'],
      data: {
        kind: 'trace',
        yTitle: 'sump, °C',
        xTitle: 'minutes after the stop',
        lines,
        limits: [],
        crossings: [],
        excluded: excludedIn(run),
      },
      table: traceTable('sump-table', lines),
    },
  };
}
