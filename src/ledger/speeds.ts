import { exact } from '../quantity/estimate.ts';
import {
  centrifugalRatio,
  overallRatio,
  pinionSpeed_rad_s,
  pitchLineSpeed_m_s,
  ringSpeedFromOutput_rad_s,
  roadSpeed_m_s,
} from '../physics/speeds.ts';
import type { Given } from '../trial/derived.ts';
import type { SeriesRecord } from '../trial/series.ts';
import type { SheetFigure } from './oils.ts';

/** The conversion card: each planned step of the output shaft as ring, pinion, road and pitch-line speed, and its centrifugal ratio. */
export function speedFigures(record: SeriesRecord): SheetFigure[] {
  const { rig, plan } = record;
  const given: Given[] = ['pinion', 'ring'].map((wheel) => ({
    symbol: wheel === 'pinion' ? 'z_p' : 'z_r',
    name: `teeth of the ${wheel}`,
    value: wheel === 'pinion' ? rig.teethPinion : rig.teethRing,
    u: null,
    unit: '1',
    from: {
      kind: 'note',
      place: rig.places.get(`teeth.${wheel}`) ?? { file: rig.file, line: 1, column: 1 },
      typed: rig.typed.get(`teeth.${wheel}`) ?? '',
    },
  }));
  const shared = { subject: { rig: rig.id }, file: rig.file, given };
  const { rollingRadius_m, ringRadius_m } = rig;
  return [
    { ...shared, quantity: 'gear-ratio', at: {}, estimate: exact(overallRatio(rig)), relation: 'speed-chain' },
    ...(plan?.steps_rad_s ?? []).flatMap((output_rad_s): SheetFigure[] => {
      const at = { outputSpeed_rad_s: output_rad_s };
      const ring_rad_s = ringSpeedFromOutput_rad_s({ output_rad_s, teeth: rig });
      const step = { ...shared, at };
      return [
        { ...step, quantity: 'ring-speed', estimate: exact(ring_rad_s), relation: 'speed-chain' },
        {
          ...step,
          quantity: 'pinion-speed',
          estimate: exact(pinionSpeed_rad_s({ output_rad_s, teeth: rig })),
          relation: 'speed-chain',
        },
        ...(rollingRadius_m === null
          ? []
          : [
              {
                ...step,
                quantity: 'road-speed' as const,
                estimate: exact(roadSpeed_m_s({ output_rad_s, rollingRadius_m })),
                relation: 'speed-chain',
              },
            ]),
        {
          ...step,
          quantity: 'pitch-line-speed',
          estimate: exact(pitchLineSpeed_m_s({ ring_rad_s, radius_m: ringRadius_m })),
          relation: 'pitch-line-speed',
        },
        {
          ...step,
          quantity: 'centrifugal-ratio',
          estimate: exact(centrifugalRatio({ ring_rad_s, radius_m: ringRadius_m })),
          relation: 'centrifugal-ratio',
        },
      ];
    }),
  ];
}
