import type { Section } from './page.ts';
import { listOf, prose, section, strong, verdict } from './spans.ts';

/** How figures are found, in words; the relations with their numbers follow on the same page. */
export const methodText: readonly Section[] = [
  section(
    'files',
    'From the raw file to a channel',
    [
      prose(
        'A logger file is read by the column map of its rig sheet: which column holds what, in which unit, with which sign, from which instrument. The file itself is never changed; its SHA-256 stands on the sheet of its run.',
      ),
      { kind: 'code', language: 'yaml', text: columnMap() },
      prose(
        'Readings outside the plausible range, steps faster than the channel can move, and readings that stand still while others move are named as findings and not used. Seconds that a note excludes are left out with their reason.',
      ),
    ],
    [
      {
        name: 'Not filled in.',
        text: ['A gap stays a gap. Nothing is interpolated across it and nothing is smoothed.'],
      },
    ],
  ),
  section('levels', 'Litres, level, immersion', [
    prose(
      'The mass poured in and the oil’s density at that temperature give litres at 20 °C. The article’s level table, straight between surveyed rows and refused outside them, gives the static level; with the ring gear’s radius that is the immersion. The litres that would bring an article to the baseline’s level come from the same table.',
    ),
    prose(
      'A level read at the rig more than the series’ tolerance away from the table is a finding on the run’s sheet.',
    ),
  ]),
  section(
    'flow',
    'Behind the window',
    [
      prose(
        'A flow trial gives no loss. It gives the running level and its swing at each step, the level after the stop, and grades of what is seen. The way up and the way down are told apart and never averaged.',
      ),
      listOf([
        [
          'Two people grade the same clips apart. What stands is the joint look, or what all observers gave alone; otherwise nothing stands and the page says between what it is open.',
        ],
        [
          'Agreement is counted on first grades only: equal, within one, and quadratic-weighted kappa. What fails the rule of the series is labelled ',
          verdict('not usable'),
          ' wherever it stands.',
        ],
        [
          'Film and log are tied by one flash that both saw; every cue, step and mark follows from it and from where the clip was cut.',
        ],
        ['Air in the oil is told only where oil was weighed. One level alone cannot part air from oil in flight.'],
      ]),
    ],
    [
      {
        name: 'Not the hot axle.',
        text: [
          'The pattern goes with the centrifugal ratio and the Reynolds number. Cold oil at the same speed is another picture; the sheet says by how much.',
        ],
      },
    ],
  ),
  section(
    'spin',
    'Spin loss',
    [
      listOf([
        [
          'At each step the readings of the steady window are averaged; the window must hold its speed and its sump temperature.',
        ],
        ['The torque flange’s zero, read before and after, is taken out in proportion to time.'],
        ['Net torque at the input times the pinion’s speed is spin power.'],
        [
          'It is brought to the reference temperatures along the run’s own windows of that speed. A law through all windows gives the exponents of viscosity and speed, and how well the steps could part them; it is used only for the way to the own running temperature.',
        ],
      ]),
    ],
    [
      {
        name: 'Which temperature.',
        text: [
          'A cooler article has thicker oil and therefore more spin loss at its own temperature. Common and own temperature are two figures.',
        ],
      },
    ],
  ),
  section(
    'heat-up',
    'Heat-up',
    [
      listOf([
        [
          strong('Time to limit'),
          ' is the first crossing after which the sump stays above the limit for the agreed hold. Not reached is a bound.',
        ],
        [
          strong('Heat made'),
          ' is power in at the input less power out at the hubs, each from torque and speed with zeros taken out.',
        ],
        [
          strong('Final temperature'),
          ' is extrapolated three ways: one store of heat, two stores joined by a conductance, and the tail of the curve alone. The misfit of each is printed. Two stores are taken when they leave significantly less than one (F test, 5 %); where the tail answers differently by more than its own scatter, the difference widens the interval.',
        ],
        [
          strong('Shed'),
          ' is heat made over the final rise; ',
          strong('store'),
          ' follows from the model that was taken.',
        ],
      ]),
    ],
    [
      {
        name: 'Near the end.',
        text: [
          'Where a limit lies close below the final temperature the curve is flat, and the time to it is mostly noise. Such a time is marked.',
        ],
      },
    ],
  ),
  section('cool-down', 'Cool-down', [
    prose(
      'After the stop the sump falls towards ambient. Its time constant and the heat store give shed at rest. Still gears stir nothing, so this stands beside shed while running and is never merged with it.',
    ),
  ]),
  section(
    'uncertainty',
    'How sure',
    [
      prose(
        'Each estimate carries its uncertainty by cause: the calibration of one torque flange, the refit, the airflow of that day, the fit. A cause has a reach, from one reading to the whole series. Two figures that share a cause move together, so that it cancels in their difference and stays in each alone. Nobody types a correlation.',
      ),
      prose(
        'Causes are combined by first-order propagation. The coverage factor follows from the effective degrees of freedom (JCGM 100:2008, G.4). Logged readings are not repeats: a repeat is a refit.',
      ),
      prose(
        'Every difference is also worked out by trials (JCGM 101:2008): each cause is drawn once a trial for the whole series, those of few repeats from their t, those with firm limits from between them, and a split of a rise goes through its own relation. Trials go on in blocks until one digit of the standard uncertainty has settled. Where an end of the linear interval lies further off than a tenth of the standard uncertainty, the interval by trials is published, and the working shows both. The seed is a hash of the logger files of the first campaign.',
      ),
    ],
    [
      {
        name: 'Digits.',
        text: ['Two digits of the ± are kept, and the value is written to the same place.'],
      },
    ],
  ),
  section('comparing', 'Comparing', [
    listOf([
      [
        'Baseline runs stand before, between and after the others. One drift common to all cells is fitted with them, over the hours that the rig turned unless the series says otherwise. Where the baseline scatters more than the others even then (F test, 1 %), it wandered, and nothing is ranked against it. Where it was not run again after the last article, or every run is of one day, the table is ',
        verdict('indicative'),
        ': it has differences and intervals, and no words.',
      ],
      [
        'The scatter of refitting is pooled over all cells that were refitted. Where each stands on one run, scatter comes from causes that are known, and the page says so.',
      ],
      [
        'A loaded run is brought to the reference ambient by its own measured slope s of heat made against the sump: final temperature by ΔT_a·K/(K − s), with K its shed and ΔT_a the ambient of its last half hour less the reference. What the ambient was before that comes in by the model, which takes it as logged; where only the tail of the run is fitted, by what the axle has felt, behind its own time constant. The working of a cell shows each line. No slope is taken for granted: a run that measured none is left as it is, and ambient may then differ by 3 K at most. Before that it is brought to the load and the speed of the plan: mesh loss, which is its heat made less the spin power of its cell at its own temperature, goes with torque and with speed, spin power with its own measured exponent of speed; the watts that this adds move the final temperature by ΔQ/(K − s). Where spin of the cell was not measured, nothing is added. Runs that differ in load or speed beyond their tolerance are not compared all the same. An error of airflow is carried into every temperature.',
      ],
      [
        'All rows are held against the baseline together (Dunnett), and all pairs of them together for the letters and places (Tukey–Kramer), so that many comparisons do not make a difference by luck. Rows that share a letter are not separated.',
      ],
      [
        'A difference is ',
        verdict('separated'),
        ' when its interval, widened for the family, leaves out zero, and ',
        verdict('not separated'),
        ' when it does not.',
      ],
      [
        'Where conditions differ beyond the tolerance of the series (oil, fill basis, speed, airflow, tilt, ambient, state of the rig) and the difference is not the subject, the pair is ',
        verdict('not ranked'),
        ', with the reason.',
      ],
      [
        'A margin is a difference that does not matter, declared before the data. A row is ',
        verdict('equal within the margin'),
        ' when two one-sided tests at the level of the family say so, and ',
        verdict('no worse than the margin'),
        ' when the worse of the two does. Without a margin nothing is called equal.',
      ],
      [
        'Every claim and every step of the main standings is worked out again under each other choice that somebody could defend, one at a time: another temperature, limit or fill, the tolerances of ambient and airflow halved and doubled, drift left in, all causes at 0.7 and at 1.4 times their size, what was excluded put back, each run left out.',
      ],
      [
        'The chance of lying lowest is the share of the trials in which a row lies lowest of those ranked. It stands beside the word and never in its place.',
      ],
    ]),
  ]),
];

function columnMap(): string {
  return `maps:
  bench:
    delimiter: ","
    decimal: "."
    header: 1
    units-row: 2
    missing: ["", "-999"]
    clock: { column: t_s, unit: s }
    columns:
      n_in:   { is: pinion-speed, unit: rpm, instrument: encoder }
      tq_in:  { is: torque-in, unit: N·m, instrument: torque-low, sign: 1 }
      T_sump: { is: sump, unit: °C, instrument: sump-probe, plausible: [-40 °C, 200 °C], max-step: 2 K/s, stuck: 120 s }`;
}
