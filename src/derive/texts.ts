import type { Finding, Place } from '../finding/finding.ts';
import { writeNumber } from '../quantity/write.ts';

/** Every text of this room. Temperatures come in °C, differences in K, as people read them. */

interface Here {
  readonly place: Place;
  readonly run: string;
}

const round = (v: number, places = 1): string => writeNumber(v, places);

export const unitDoubtful = (f: Here & { read: number; typed: number }): Finding => ({
  code: 'unit-doubtful',
  level: 'warning',
  place: f.place,
  says: `Ambient starts at ${round(f.read)} in a column mapped as °C; the note says ${round(f.typed)} °C.`,
  why: 'Read as °F the column agrees with the note, so the temperatures of this file may be °F under a °C label.',
  write:
    'If they are °F, give this run a map whose temperature columns say  unit: °F ; otherwise mend the ambient in the note.',
  effect: 'No figure is made of this run until a person decides.',
  about: { run: f.run },
});

export const swapDoubtful = (f: Here & { gap: number; ifSwapped: number }): Finding => ({
  code: 'swap-doubtful',
  level: 'warning',
  place: f.place,
  says: `Left less right output torque is ${round(f.gap)} N·m after zeros; swapped columns would give ${round(f.ifSwapped)} N·m.`,
  why: 'Both outputs are held equal, so left and right columns of this file may be swapped.',
  write: 'Check the plugs. If swapped, give this run a map with torque-out-left and torque-out-right exchanged.',
  effect: 'Loss figures use the sum of both and are kept.',
  about: { run: f.run },
});

export const beyondRange = (f: Here & { kind: string; instrument: string }): Finding => ({
  code: 'beyond-range',
  level: 'warning',
  place: f.place,
  says: `Readings of ${f.kind} lie outside the range of ${f.instrument}.`,
  why: 'An instrument says nothing reliable beyond its range; more often the column, its unit or the instrument in the map is another one.',
  write: 'Look at the map and at the plugs; correct the range in the rig sheet if that is what is wrong.',
  effect: 'The figures of this run are kept, and its sheet says so.',
  about: { run: f.run },
});

export const skinAbove = (f: Here & { above: number }): Finding => ({
  code: 'skin-above-sump',
  level: 'warning',
  place: f.place,
  says: `Skin reads above the sump all the time, by ${round(f.above)} K on the mean.`,
  why: 'Heat is made inside, so the outside is the cooler one; the two columns may be exchanged.',
  write: 'Check the plugs. If they are exchanged, give this run a map with skin and sump exchanged.',
  effect: 'The figures of this run are kept, and its sheet says so.',
  about: { run: f.run },
});

export const endsEarly = (f: Here & { logged: number; noted: number }): Finding => ({
  code: 'log-ends-early',
  level: 'notice',
  place: f.place,
  says: `The log holds ${round(f.logged, 0)} min of a run that took ${round(f.noted, 0)} min by its note.`,
  why: 'A file that was cut off may still end in a whole line; its last step is then shorter than it was run.',
  write: 'Copy the file from the logger anew if it was cut off; otherwise mend  started:  and  ended:  in the note.',
  effect: 'The figures of what it holds are kept.',
  about: { run: f.run },
});

export const endsInStep = (f: Here & { says: string }): Finding => ({
  code: 'log-ends-in-step',
  level: 'notice',
  place: f.place,
  says: `The log ends while a step is run: ${f.says}.`,
  why: 'A file that was cut off may still end in a whole line; the window of its last step is then another.',
  write: 'Copy the file from the logger anew if it was cut off. If it was run so, say it in the words of the note.',
  effect: 'The figures of what it holds are kept.',
  about: { run: f.run },
});

export const farFromModels = (f: Here & { power: number; low: number; high: number; at: string }): Finding => ({
  code: 'loss-far-from-models',
  level: 'warning',
  place: f.place,
  says: `Spin power at ${f.at} is ${round(f.power, 0)} W; models let one expect ${round(f.low, 0)} W to ${round(f.high, 0)} W.`,
  why: 'So far off is more often a wrong column, unit, zero or level than a discovery.',
  write: 'Look at the map, at the zeros and at the fill. If it stands, say in the note what was looked at.',
  effect: 'The figures of this run are kept, and its sheet says so.',
  about: { run: f.run },
});

export const probeLoose = (f: Here & { minutes: number; fell: number }): Finding => ({
  code: 'probe-loose',
  level: 'warning',
  place: f.place,
  says: `Skin falls by ${round(f.fell)} K against the sump at ${round(f.minutes)} min and stays down.`,
  why: 'No housing cools that fast under load; the skin probe came loose.',
  write: 'Nothing needs writing. To say why, add an entry under  exclude:  for channel skin with the reason.',
  effect: 'Skin readings from there on are not used.',
  about: { run: f.run },
});

export const startSpread = (f: Here & { apart: number }): Finding => ({
  code: 'start-spread',
  level: 'notice',
  place: f.place,
  says: `Sump and ambient differ by ${round(Math.abs(f.apart))} K at a cold start.`,
  why: 'After a cold soak both should read alike, within 2 K; one probe, or the soak, is not what it was.',
  write: 'Look at the still of the ambient probe and at the time since the last run.',
  effect: 'The run is kept.',
  about: { run: f.run },
});

export const ambientMoved = (f: Here & { drift: number }): Finding => ({
  code: 'ambient-moved',
  level: 'warning',
  place: f.place,
  says: `Ambient moved by ${round(f.drift)} K during the run.`,
  why: 'More than 3 K: temperatures of this run stand for no one ambient.',
  write: 'Repeat the run, or keep it out of temperature comparisons.',
  effect: 'The run is kept; its temperatures are not compared.',
  about: { run: f.run },
});

export const levelOff = (f: Here & { surveyed: number; dipped: number; side: string }): Finding => ({
  code: 'level-off-survey',
  level: 'warning',
  place: f.place,
  says: `Level ${f.side} was read at ${round(f.dipped)} mm; the litres weighed in stand at ${round(f.surveyed)} mm in the level table.`,
  why: 'More than 3 mm apart: oil is elsewhere, the axle is not level, or the mass is wrong.',
  write: 'Weigh, wait and read again; or correct the mass or the reading in the note.',
  effect: 'The run is kept, its level figures are flagged.',
  about: { run: f.run },
});

export const fillOutside = (f: Here & { litres: number; low: number; high: number }): Finding => ({
  code: 'fill-outside-table',
  level: 'warning',
  place: f.place,
  says: `${round(f.litres, 2)} L at 20 °C lie outside the level table, which runs from ${round(f.low, 2)} to ${round(f.high, 2)} L.`,
  why: 'The table is linear between surveyed rows and says nothing beyond them.',
  write: 'Survey the missing rows, or check the mass and its unit.',
  effect: 'No level figure is made of this run.',
  about: { run: f.run },
});

export const capExceeded = (f: Here & { sump: number; cap: number }): Finding => ({
  code: 'cap-exceeded',
  level: 'notice',
  place: f.place,
  says: `Sump reaches ${round(f.sump)} °C behind a window whose cap is ${round(f.cap)} °C.`,
  why: 'Clear plastic softens and cracks under hot oil; the cap is the lab’s own.',
  write: 'Inspect the window before the next run and write down what was seen.',
  effect: 'The run is marked: cap exceeded.',
  about: { run: f.run },
});

export const limitExceeded = (f: Here & { sump: number; limit: number; of: string }): Finding => ({
  code: 'sump-limit-exceeded',
  level: 'notice',
  place: f.place,
  says: `Sump reaches ${round(f.sump)} °C; ${f.of} states ${round(f.limit)} °C at the highest.`,
  why: 'Past its stated limit a part or an oil may not be again what it was before.',
  write: 'Look at the part and the oil before they are run again, and write down what was seen.',
  effect: 'The run is kept.',
  about: { run: f.run },
});

export const probeAboveLevel = (f: Here & { step: number; level: number; tip: number; sawIn: string }): Finding => ({
  code: 'probe-above-level',
  level: 'warning',
  place: f.place,
  says: `At ${round(f.step, 0)} rpm the running level is ${round(f.level)} mm (${f.sawIn}); the tip of the sump probe is at ${round(f.tip)} mm.`,
  why: 'A probe above the running level reads mist and film, not the sump.',
  write: 'Fit a deeper probe for this article, or leave this step out of its plan.',
  effect: 'Nothing is given at a sump temperature for this step.',
  about: { run: f.run },
});

export const overdue = (f: Here & { instrument: string; due: string; runs: number }): Finding => ({
  code: 'instrument-overdue',
  level: 'warning',
  place: f.place,
  says: `${f.instrument} was due on ${f.due}; ${f.runs} run${f.runs === 1 ? '' : 's'} used it after that.`,
  why: 'Its stated accuracy is no longer backed by a calibration.',
  write: 'Enter the new calibration, or an in-situ check under  checked: .',
  effect: 'Figures of those runs that rest on it are flagged.',
});

export const notDerived = (f: Here & { why: string }): Finding => ({
  code: 'nothing-derived',
  level: 'warning',
  place: f.place,
  says: `No figure could be made of this run: ${f.why}.`,
  why: 'Without it the trial has nothing to reduce.',
  write:
    'Check the columns and units of the map, the teeth in rig.md, the steps and holds in plan.md, and the exclusions of the run.',
  effect: 'The run is listed without figures.',
  about: { run: f.run },
});

export const finalNotTold = (f: Here & { why: string }): Finding => ({
  code: 'final-not-told',
  level: 'warning',
  place: f.place,
  says: `No final temperature could be made of this run: ${f.why}.`,
  why: 'Heat made, shed, store and final temperature hang together; where one has no answer none is given.',
  write: 'Check the column map and the exclusions of the run; or run longer.',
  effect: 'Times to limits and what else was read directly are given, nothing else.',
  about: { run: f.run },
});

export const gradeOff = (f: { place: Place; grade: string; reads: number; from: number; to: number }): Finding => ({
  code: 'grade-off',
  level: 'warning',
  place: f.place,
  says: `${round(f.reads, 2)} mm²/s; ${f.grade} promises ${round(f.from, 2)}${Number.isFinite(f.to) ? ` to ${round(f.to, 2)}` : ' or more'} mm²/s.`,
  why: 'Grade and viscosity contradict each other, and figures rest on the viscosity.',
  write: 'Correct the one that is wrong. For a grade of an older edition say so in the words of the note.',
  effect: 'The viscosity as typed is used.',
});

/** Notes that a figure carries wherever it goes. */
export const overdueNote = (f: { instrument: string; due: string }): string =>
  `rests on ${f.instrument}, overdue since ${f.due}`;

export const noInstrumentNote = (channels: readonly string[]): string =>
  `no instrument is named for ${channels.join(', ')}: the ± holds nothing of its calibration`;

export const offSurveyNote = (f: { side: string; off: number }): string =>
  `the level ${f.side} was read ${round(f.off)} mm off the survey`;
