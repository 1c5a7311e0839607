import { gradeKinds } from '../trial/flow.ts';
import { scales } from '../trial/grade-anchors.ts';
import type { Page } from './page.ts';
import { capital, facts, prose, section } from './spans.ts';

/** The words of this trade and of these pages, in our own definitions; each has one meaning throughout the book. */
const vocabulary: readonly { readonly id: string; readonly heading: string; readonly words: readonly Word[] }[] = [
  {
    id: 'the-axle',
    heading: 'The axle and its oil',
    words: [
      ['axle, final drive', 'The gears that turn a propshaft’s turning into the wheels’, with their housing.'],
      ['pinion and ring gear', 'The driving and the driven member of the pair. The ring gear dips into the sump.'],
      [
        'hypoid, spiral bevel',
        'Kinds of pair. In a hypoid the pinion’s axis passes above or below the ring gear’s; that distance is the offset.',
      ],
      ['cover, bowl, housing', 'The bolted lid, a lid deep enough to hold oil, and the carrier that it closes.'],
      ['sump', 'The oil at rest in the housing, and its temperature.'],
      ['fill', 'The volume put in. It is shown in litres at 20 °C, whatever the oil’s temperature was at the scale.'],
      ['level', 'Height of the oil’s surface at rest, from the axle centreline, negative below it.'],
      ['running level', 'The same surface while the gears turn and hold part of the oil up.'],
      ['immersion', 'How deep the ring gear’s rim stands in the oil at rest.'],
      ['tube lip, filler lip', 'The heights at which oil runs into the axle tubes, and out of the filler.'],
      ['carry-over', 'Oil that the ring gear flings to the pinion bearings. Without it they run on what they hold.'],
      ['breather', 'The opening that keeps the housing at the pressure of the room.'],
      [
        'viscosity',
        'How strongly the oil resists being sheared. Kinematic viscosity is given in mm²/s, at a temperature.',
      ],
    ],
  },
  {
    id: 'loss-and-heat',
    heading: 'Loss and heat',
    words: [
      ['spin loss', 'Everything that an unloaded axle takes: churning, windage, seals, and the bearings’ share.'],
      ['spin power, spin torque', 'Spin loss as watts, and as torque at the input.'],
      ['churning, windage', 'Drag of parts through oil, and through air and mist.'],
      ['mesh loss', 'Loss that grows with load.'],
      ['heat made', 'Loss power turned into heat, W: what goes in at the input less what comes out at the hubs.'],
      [
        'shed',
        'Heat given off for each kelvin of rise above ambient, W/K. It belongs to the whole axle, not to a cover alone.',
      ],
      ['store', 'Heat that one kelvin more of housing, gears and oil takes up, kJ/K.'],
      [
        'final temperature, final rise',
        'Where a heat-up would end if it went on, and that temperature less ambient. It is extrapolated, and says how.',
      ],
      [
        'time to limit',
        'Time from load on until the sump stays above a limit for the agreed hold. Not reached is a result: “> 150 min”.',
      ],
      ['time constant', 'Time in which the remaining difference shrinks to 37 %.'],
      [
        'shed at rest',
        'Shed with still gears, from a cool-down. Still oil stirs nothing, so this is not the running value.',
      ],
      [
        'thermal dose',
        'Hours that the oil spent in each band of ten degrees, by the sump probe. It is time, not a share of a life.',
      ],
      ['charge', 'The oil that went in at one refit of one article, until it is drained.'],
      [
        'repeatability of a method',
        'How far two results on one oil lie apart at most in 95 % of cases, by one operator on one apparatus.',
      ],
      [
        'unused sample',
        'Oil of the same batch that saw no run. Without one there is no before, and nothing is said of a change.',
      ],
      [
        'pinion bearing above sump',
        'Temperature of the pinion’s outer race less the sump’s: a sign of how well the bearing is supplied.',
      ],
    ],
  },
  {
    id: 'behind-the-window',
    heading: 'Behind the window',
    words: [
      [
        'flow trial',
        'The gears turned at stepped speeds without load, up and down again, and watched through a window.',
      ],
      ...gradeKinds.map((kind): Word => [
        scales[kind].name,
        `${capital(scales[kind].of)}: from 0, ${scales[kind].anchors[0]}, to 4, ${scales[kind].anchors[4]}.`,
      ]),
      ['View', 'How much could be seen, 0 to 3. With View 0 or 1 nothing is graded.'],
      ['ng', 'Not gradable. It is an answer of its own, and never counted as 0.'],
      ['way up, way down', 'Steps of rising speed, and those after the highest. They are told apart, never averaged.'],
      ['first grade', 'What one observer gave alone, before anybody looked again. It is kept.'],
      ['joint look', 'Both observers look again together at a step where they differed. What they settle on stands.'],
      ['blind', 'Graded from a coded clip, without knowing the fill or the oil. Shape cannot be hidden.'],
      [
        'agreement',
        'How far two observers gave the same first grades: the share that is equal, the share within one, and kappa.',
      ],
      [
        'kappa',
        'Agreement beyond what chance would give, 1 at most. A difference of two grades weighs four times one of one.',
      ],
      ['not usable', 'On this kind of grade the observers agree too little for the rule of the series.'],
      ['swing', 'How far the running level moves to either side of its mean.'],
      ['held up', 'Oil that is missing from the level after settling: on walls, in trays, in the tubes, or lost.'],
      ['sync', 'A flash that camera and logger both see. It ties the film to the log.'],
      [
        'Reynolds number',
        'How fast the gear turns for how thick the oil is. Pictures at unlike numbers are unlike pictures.',
      ],
      ['centrifugal ratio', 'How many times its weight the oil at the rim of the gear is thrown outward.'],
      [
        'side by side',
        'Two flow trials with one oil and one tilt, and with the same litres or the same level, step by step.',
      ],
    ],
  },
  {
    id: 'comparing',
    heading: 'Comparing',
    words: [
      ['article', 'A thing that is compared: a cover, a bowl, an insert, a housing.'],
      ['baseline', 'The article, oil and fill that all others are compared with.'],
      ['cell', 'Article, oil, fill and tilt together. Runs of one cell repeat each other.'],
      ['refit', 'Taken off, drained, put back and filled again. One refit is one repeat; a logged reading is not.'],
      ['bracketing baseline', 'Baseline runs before and after, so that a wandering rig is seen and taken out.'],
      ['effect', 'Change against the baseline, with its interval.'],
      [
        'standing',
        'Articles side by side with intervals and letters. It gives no one place, only those that a row may take.',
      ],
      ['group letters', 'Rows that share a letter are not separated from each other.'],
      [
        'separated',
        'The interval of the difference, widened for the number of comparisons in the family, leaves out zero.',
      ],
      [
        'not separated',
        'That interval holds zero. The runs cannot tell the two apart; they may still differ by less than they could show.',
      ],
      [
        'not ranked',
        'The two were not run under matching conditions, so no difference is formed. The reason stands beside it.',
      ],
      [
        'same litres, same level',
        'Two ways to be fair. A roomier bowl at the same litres stands lower; at the same level it holds more.',
      ],
      ['smallest difference', 'What these runs could just have separated.'],
    ],
  },
  {
    id: 'claims',
    heading: 'Claims',
    words: [
      ['claim', 'A sentence that its runs can refute: two cells, a quantity, a threshold, and the day it was put.'],
      ['threshold', 'The smallest difference that matters to whoever put the claim, said beforehand.'],
      ['shown', 'The whole interval lies at the threshold or beyond it, on the side that the claim names.'],
      ['leaning', 'The interval leaves out zero on the side of the claim, and reaches over the threshold.'],
      ['not shown', 'The interval holds zero and reaches the threshold: the runs say neither yes nor no.'],
      ['shown against', 'The whole interval lies short of the threshold, or on the other side.'],
      [
        'cannot tell',
        'No figure can be formed: runs are missing, a limit was not reached, or conditions do not match. The reason stands beside it.',
      ],
      [
        'within',
        'A claim that two differ little. Leaning then means that the value lies within and the interval does not.',
      ],
      [
        'put after its data',
        'The claim was written down on or after the day of its first run. It is judged all the same, and stamped.',
      ],
      [
        'makes less, sheds more',
        'A difference in final rise in the two parts that it is the sum of: less heat made, and more shed for each kelvin.',
      ],
      [
        'share',
        'How much of that difference the heat made accounts for. It is told only where the whole is separated.',
      ],
      [
        'family',
        'All claims put before their data, judged together so that many of them do not make one come true by chance.',
      ],
    ],
  },
  {
    id: 'doubt',
    heading: 'Doubt',
    words: [
      ['interval', 'Where the true value is expected to lie in 95 of 100 cases, if every cause of error is known.'],
      [
        'standard uncertainty',
        'One standard deviation of what the figure may be off; the interval is it times the coverage factor k.',
      ],
      [
        'cause',
        'One source of error, with the reach that it has: a reading, a run, a refit, a day, a state of the rig, the series.',
      ],
      ['shared cause', 'A cause in both of two figures, such as one torque cell. It cancels in their difference.'],
      ['measured', 'Read from an instrument and averaged.'],
      ['derived from measurement', 'Calculated from measured values by a relation that is named.'],
      ['model estimate', 'Needs a model beyond the readings; drawn as a band without a central mark.'],
      ['repeatability', 'How far the same cell lands from itself when refitted.'],
      ['overdue', 'The instrument’s next calibration was due before the run. Its figures say so.'],
    ],
  },
  {
    id: 'these-pages',
    heading: 'These pages',
    words: [
      ['book', 'All that one lab publishes.'],
      ['series', 'Runs that answer one question on one rig.'],
      ['run', 'One trial: flow, spin, heat-up or cool-down.'],
      ['step', 'A part of a run at one speed.'],
      ['sheet', 'The page of one thing: article, oil, rig, plan, run.'],
      ['figure', 'A value that a page shows. Each has a name that stays, and a working.'],
      ['working', 'How a figure was found: what was given, by which relation, with which numbers, and how sure.'],
      ['ledger', 'The one home of all figures of a series.'],
      ['set aside', 'A run whose figures are not used; it stays listed, with its reason.'],
      ['finding', 'Something the checks found in a note or a logger file, with its line and what to write.'],
      ['part', 'One instalment of a series. It is never rewritten once it is out.'],
      ['pinned', 'Kept as it stood at the end of the day on which a part came out.'],
      ['then and now', 'What a part showed on its day beside what holds today, with the reason why they differ.'],
      ['asks', 'The questions of a series: open, answered by a part, dropped with the reason, or handed on.'],
      ['not looked at', 'What the plan, a claim or a question names and no run covers.'],
      ['amends', 'Corrections with what they reached, and objections with their answers.'],
      ['campaign', 'A later time at which the baseline was run again, before anything else.'],
      ['pack', 'One folder with notes, raw files, pages and tool, that builds again without a network.'],
    ],
  },
];

type Word = readonly [word: string, meaning: string];

export function wordsPage(): Page {
  return {
    kind: 'words',
    path: 'words/',
    title: 'Words',
    description: 'The words of these pages, each with one meaning.',
    whereabouts: ['The book · words'],
    lead: [
      'Each word has one meaning throughout the book. Where people use several words for a thing, one was chosen and kept.',
    ],
    banners: [],
    series: null,
    sections: vocabulary.map(({ id, heading, words }) =>
      section(id, heading, [
        id === 'doubt' ? prose('Doubt stands beside the sentence that it limits, in the margin or after the ±.') : null,
        facts(words.map(([word, meaning]) => [word, [meaning]])),
      ]),
    ),
  };
}
