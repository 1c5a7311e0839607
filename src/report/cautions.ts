import type { Article } from '../trial/article.ts';
import type { TrialKind } from '../trial/plan.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';

/** One hazard of one stage of the work. Own words; a prompt for the people at the rig, never a permission. */
export interface CautionRow {
  /** Slug; on a sheet its note carries the code `caution-<stage>`. */
  readonly stage: string;
  readonly name: string;
  readonly hazard: string;
  /** For the margin of a sheet: one or two short sentences. */
  readonly short: string;
  /** For the page of all cautions. */
  readonly caution: string;
  /** Whose word counts. */
  readonly deferral: string;
  readonly applies: Applies;
}

/** Every condition that is stated must hold. */
interface Applies {
  readonly kinds?: readonly TrialKind[];
  readonly rigs?: readonly Rig['kind'][];
  readonly when?: 'altered part' | 'window' | 'tilted' | 'fan' | 'shafts turn';
}

const bench = ['axle_bench', 'gearbox_bench'] as const;
const vehicle = ['vehicle_on_rollers', 'vehicle_on_stands', 'road'] as const;
const powered = ['flow', 'spin', 'heat-up', 'check'] as const;

/** What of a run decides its cautions; a run that is only planned has it too. */
export type CautionsOf = Pick<Run, 'trial' | 'article' | 'tilt_ratio' | 'airflow_m_s' | 'gearState'>;

export function cautionsFor(run: CautionsOf, article: Article | undefined, rig: Rig): readonly CautionRow[] {
  const holds: Readonly<Record<NonNullable<Applies['when']>, boolean>> = {
    'altered part': article?.role === 'modified' || article?.role === 'window_copy',
    window: article?.role === 'window_copy' || (rig.window?.usedOn.includes(run.article) ?? false),
    tilted: run.tilt_ratio !== 0,
    fan: run.airflow_m_s > 0,
    'shafts turn': run.trial !== 'soak' && (run.trial !== 'cool-down' || run.gearState !== 'still'),
  };
  return cautions.filter(
    ({ applies: { kinds, rigs, when } }) =>
      (kinds === undefined || kinds.includes(run.trial)) &&
      (rigs === undefined || rigs.includes(rig.kind)) &&
      (when === undefined || holds[when]),
  );
}

export const cautions: readonly CautionRow[] = [
  {
    stage: 'rotation',
    name: 'Anything that turns',
    hazard:
      'Clothing or a hand is drawn in at a propshaft, flange, hub, tyre, or at bolt heads that look harmless behind a window.',
    short: 'Guards on before power. No gloves, cuffs, lanyards or cloths near a shaft; nobody in its plane.',
    caution:
      'Guards go on before power does. No gloves, loose cuffs, lanyards or cloths near a shaft, and nobody stands in the plane of a shaft or tyre. Stop and isolate before reaching for a lamp, a probe or a camera.',
    deferral:
      'machine-guarding and work-equipment law, lockout rules, the standards on guards, distances and emergency stops (ISO 14120, ISO 13857, ISO 13850)',
    applies: { when: 'shafts turn' },
  },
  {
    stage: 'altered-part',
    name: 'A cut or altered part',
    hazard: 'The structure is weaker, bolts are too short, edges are sharp.',
    short: 'A test piece, marked as one: never refitted to a road vehicle.',
    caution:
      'A part that was cut open is a test piece for good: mark it and never refit it to a road vehicle. Find out from the maker whether the cover carries any of the axle’s stiffness before it is run under load.',
    deferral: 'the axle maker’s service data',
    applies: { when: 'altered part' },
  },
  {
    stage: 'window',
    name: 'Clear plastic over hot oil',
    hazard: 'The plastic softens or cracks under stress in oil, and lets hot oil out at once.',
    short:
      'Sump cap set and watched. No loaded heat-up behind plastic; a second clear screen in front; look for crazing at each refit.',
    caution:
      'Soak a stressed sample in the oil first. Set a sump cap well under what the material stands for long (polycarbonate is often quoted near 125 °C, acrylic far lower) and stop there. No loaded heat-up behind plastic. Put a second clear screen in front, look for crazing at each refit, and retire the part by hours.',
    deferral: 'the plastic maker’s data and the oil’s data sheet',
    applies: { when: 'window' },
  },
  {
    stage: 'lamps-and-probes',
    name: 'Lamps and probes in oil',
    hazard: 'Shock, a short, heat at the lamp, glass among the gears.',
    short: 'Extra-low voltage, sealed, fused, tied down; lamps outside where possible, all out before a heat-up.',
    caution:
      'Extra-low voltage, sealed, fused and relieved of strain; nothing loose inside a gearcase. Keep lamps outside where the view allows it, and take everything out before a heat-up.',
    deferral: 'the lab’s electrical procedure and local law',
    applies: { kinds: ['flow'] },
  },
  {
    stage: 'filling',
    name: 'Filling and draining',
    hazard: 'Slips, burns, oil on the skin, the wrong oil.',
    short: 'Tray under, wipe at once, let it cool. Gloves for handling oil, off before anything turns.',
    caution:
      'Put a tray under it, wipe at once and let the oil cool. Gloves are for handling oil and come off before anything turns. Keep the oil’s data sheet at the bench; store used oil and hand it on by the local rule.',
    deferral: 'the oil’s data sheet and local rules for used oil',
    applies: { kinds: powered },
  },
  {
    stage: 'breather',
    name: 'Breather',
    hazard: 'Pressure builds behind a closed or blocked breather, blows a seal, or sprays when a plug is opened.',
    short: 'Proven open before the run, never plugged to hold foam. Loosen a filler slowly, face away.',
    caution:
      'Prove the breather open before each run and never plug it to keep foam in. Loosen a filler plug slowly and with the face away from it.',
    deferral: 'the axle maker’s service data',
    applies: { kinds: ['flow', 'spin', 'heat-up', 'soak', 'check'] },
  },
  {
    stage: 'hot-parts',
    name: 'Hot sump, skin and brakes',
    hazard: 'Burns, seals that fail, smoke.',
    short:
      'Stop temperature stated below the limits of part, oil and seals, with an automatic trip; a sign while it is hot.',
    caution:
      'State a stop temperature below the limits of part, oil and seals, and let a trip enforce it. A sign says hot until the skin is under the touch threshold that the lab has chosen.',
    deferral: 'ISO 13732-1, which gives burn thresholds and sets no limits, and the makers of oil and seals',
    applies: { kinds: ['spin', 'heat-up', 'cool-down', 'soak'] },
  },
  {
    stage: 'fire',
    name: 'Fire',
    hazard: 'Oil mist, rags, hot lamps or brakes, a burst hose.',
    short:
      'Extinguisher for oil and electrics at hand, mist drawn off, margin to the flash point kept; never unattended.',
    caution:
      'Keep an extinguisher suited to oil and electrics at hand and draw oil mist off. No smoking, no open flame, no heat-up without somebody there. Read the flash point from the data sheet and keep a margin to it.',
    deferral: 'the oil’s data sheet and the fire rules of the building',
    applies: { kinds: ['spin', 'heat-up'] },
  },
  {
    stage: 'bench',
    name: 'Spin and load on a bench',
    hazard: 'Overspeed, a broken shaft, an absorber that loses its load.',
    short: 'Speed and torque trips set; coupling rated, guarded and contained; emergency stop tried today.',
    caution:
      'Set speed and torque trips. Couplings are rated and guarded, and containment stands before the first start. Try the emergency stop each day of testing; a restart needs a person at the rig.',
    deferral: 'a risk assessment for the rig (ISO 12100), its makers’ data, local law',
    applies: { kinds: powered, rigs: bench },
  },
  {
    stage: 'rollers',
    name: 'Vehicle on rollers',
    hazard: 'The vehicle climbs out, a strap fails, a tyre bursts, wheel-speed controls act.',
    short: 'Rated straps to the maker’s points, chocks, clear zone front and rear, controls in roller mode.',
    caution:
      'Straps of stated rating go to the maker’s points, with chocks and a clear zone front and rear. Check the tyre’s rating for roller heat, put the vehicle’s controls in the maker’s roller mode, and draw off exhaust where there is an engine.',
    deferral: 'the vehicle maker’s and the roller maker’s instructions',
    applies: { rigs: ['vehicle_on_rollers'] },
  },
  {
    stage: 'stands',
    name: 'Vehicle on stands',
    hazard: 'The vehicle falls from a stand; a wheel or hub is flung off.',
    short: 'Rated stands on level floor at the maker’s points; nobody beneath while anything turns.',
    caution:
      'Use rated stands on a level floor at the maker’s points. Wheels are both fitted and guarded, or both off with the nuts captured. Think of the side load that torque brings. Nobody goes beneath while anything turns.',
    deferral: 'the vehicle maker’s service data, the standards for jacks and stands, motor-vehicle-repair guidance',
    applies: { rigs: ['vehicle_on_stands'] },
  },
  {
    stage: 'electric-drive',
    name: 'Battery-electric drive',
    hazard: 'High voltage, creep without warning, voltage made by turning the wheels.',
    short:
      'Where the drive is electric: maker’s isolation by a trained person, keys held; turning wheels can energise it.',
    caution:
      'Where the vehicle drives electrically, a trained person isolates it by the maker’s procedure and holds the keys. Turning the wheels can energise the machine.',
    deferral: 'the vehicle maker’s isolation procedure and licensed practice',
    applies: { rigs: vehicle },
  },
  {
    stage: 'tilt',
    name: 'Tilted rig',
    hazard: 'The rig tips; oil runs into tubes and hubs.',
    short: 'Stops and pins set at this angle, trays at the hubs; look at the brakes for oil afterwards.',
    caution: 'Set stops and pins at each angle and trays under the hubs. Look at the brakes for oil afterwards.',
    deferral: 'the rig maker’s data and the lab’s own procedure',
    applies: { when: 'tilted' },
  },
  {
    stage: 'fan',
    name: 'Airflow fan',
    hazard: 'Blades, flying grit, noise.',
    short: 'Mesh guard on, floor swept before the fan starts.',
    caution:
      'The mesh guard is on and the floor is swept before the fan starts. Hearing protection follows what was measured.',
    deferral: 'the fan maker’s data and the law on noise at work',
    applies: { when: 'fan' },
  },
  {
    stage: 'noise',
    name: 'Noise',
    hazard: 'Hearing suffers over long days.',
    short: 'Measured and posted; ears protected, people relieved.',
    caution: 'Measure it, post the figure, relieve people in turn and protect ears.',
    deferral: 'the law on noise at work',
    applies: { kinds: powered },
  },
  {
    stage: 'cool-down',
    name: 'After the stop',
    hazard: 'People come close too soon; some parts grow hotter after the stop.',
    short: 'Sign up until the probe, not the clock, says it is cool.',
    caution:
      'A sign and a timer stay up until the probe, not the clock, says it is cool. Some parts still rise after the stop.',
    deferral: 'the lab’s own procedure',
    applies: { kinds: ['heat-up', 'cool-down', 'soak'] },
  },
  {
    stage: 'sampling',
    name: 'Taking an oil sample',
    hazard: 'Burns, a sleeve in the fan, a hot syringe.',
    short: 'Only at standstill, into a labelled bottle.',
    caution: 'Only at standstill, into a labelled bottle. No sample is drawn from a turning axle.',
    deferral: 'the oil’s data sheet and the oil laboratory’s instructions',
    applies: { kinds: ['cool-down', 'soak'] },
  },
  {
    stage: 'road',
    name: 'Road or hill route',
    hazard: 'Traffic, loss of oil far from help, an untried part on a public road.',
    short:
      'Legal, insured, production parts only; route and recovery planned; a second person watches the instruments.',
    caution:
      'Legal, insured, and with production parts only. Plan the route and the recovery, agree the stop temperature, and let a second person watch the instruments.',
    deferral: 'traffic law, the insurer, licensed practice',
    applies: { rigs: ['road'] },
  },
  {
    stage: 'filming',
    name: 'Filming',
    hazard: 'Eyes are on the camera and not on the machine.',
    short: 'Cameras fixed and remote; one person talks, another runs the rig.',
    caution: 'Cameras are fixed and worked from a distance. One person talks, another runs the rig.',
    deferral: 'the lab’s own procedure',
    applies: { kinds: ['flow'] },
  },
];
