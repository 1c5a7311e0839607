import { writeNumber } from '../quantity/write.ts';
import { difference, estimate, quotient, type Cause, type Estimate, type Part } from '../quantity/estimate.ts';
import type { LogLogLine } from '../physics/viscosity.ts';
import { meanOf } from './readings-of.ts';
import type { At, Given, Result, Step } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { Plan } from '../trial/plan.ts';
import { feltAmbient, heatAnswer } from './answer.ts';
import { endAmbient_K } from './lagged.ts';
import { bearingRise } from './bearing.ts';
import { calibration, fitScatter, gather, modelSpread, readingScatter, type Contribution } from './causes.ts';
import { closureOf } from './closure.ts';
import { extrapolated } from './extrapolated.ts';
import { firstSustained } from './crossings.ts';
import { finalTemperature } from './final.ts';
import { heatLaw } from './heat-law.ts';
import { nothing, type HeatUpDerived } from './heat-up-derived.ts';
import { heatSeries } from './heat-series.ts';
import { givens } from './heat-givens.ts';
import { logSource, rowsBetween, type Reading } from './reading.ts';
import { storeOf } from './store.ts';
import { torqueChain } from './torque-chain.ts';
import { untold } from './untold.ts';

/**
 * A loaded heat-up: heat made, final temperature and rise, shed, store, sustained crossings, pinion bearing above sump,
 * closure of the balance. The final temperature is stated for the ambient of the last half hour.
 */
export function deriveHeatUp(input: {
  reading: Reading;
  plan: Plan;
  line: LogLogLine;
  speed_rad_s: number;
}): HeatUpDerived {
  const { reading, plan, line, speed_rad_s } = input;
  const { run, log } = reading;
  const series = heatSeries(reading, { bin_s: 20, loaded: true });
  if (series === null) return nothing('sump, ambient, torque or speed is missing from its logger file');
  if (series.time_s.length < 45) return nothing('shorter than a quarter of an hour');
  const heat = heatLaw(series, line);
  if (heat === null) return nothing('too few readings of torque and sump together');
  const end_s = log.time_s[log.rows - 1]!;
  const lastRows = rowsBetween(log.time_s, Math.max(0, end_s - 1800), end_s);
  const ambient = meanOf(reading.channel('ambient')!.subarray(...lastRows));
  const skinProbe = reading.instrument('skin');
  const skinOffset_K = skinProbe === null ? 0.5 : calibration(skinProbe, 330).u;
  const final = finalTemperature({ series, heat, skinOffset_K });
  const { taken } = final;
  const reason = untold({ series, ambient_K: ambient.mean, final_K: taken.final_K, u_K: taken.u_K });

  const probe = reading.instrument('sump');
  const air = reading.instrument('ambient');
  const cal = (i: typeof probe, at: number): Contribution | null => (i === null ? null : calibration(i, at));
  const causes: Cause[] = [];
  const built = (value: number, list: readonly { of: Contribution | null; sensitivity: number }[]): Estimate => {
    const found = gather(list);
    causes.push(...found.causes);
    return estimate(value, found.parts);
  };
  const at: At = {};
  const sumpCal = cal(probe, taken.final_K);
  const airCal = cal(air, ambient.mean);
  const fitted = fitScatter({ run: run.id, what: 'final temperature', u: taken.u_K, dof: taken.dof });
  const beyond = extrapolated({
    start_K: series.sump_K.find((v) => !Number.isNaN(v)) ?? NaN,
    last_K: series.sump_K.findLast((v) => !Number.isNaN(v)) ?? NaN,
    final_K: taken.final_K,
  });
  const choice = modelSpread({
    run: run.id,
    what: 'final temperature',
    u: Math.hypot(final.spread_K, beyond.u_K),
  });
  const felt = feltAmbient({ run: run.id, series, taken });
  const finalT = built(taken.final_K, [
    { of: sumpCal, sensitivity: 1 },
    { of: fitted, sensitivity: 1 },
    { of: choice, sensitivity: 1 },
    { of: felt.open, sensitivity: -1 },
  ]);
  const ambientScatter = readingScatter({ run: run.id, what: 'ambient', u: ambient.u, dof: ambient.dof });
  const air_K = built(
    endAmbient_K(series),
    [airCal, ambientScatter].map((of) => ({ of, sensitivity: 1 })),
  );
  const rise = difference(finalT, air_K);
  const made_W = heat.at_W(taken.final_K);
  const chain = torqueChain(reading, speed_rad_s);
  const madeFit = fitScatter({ run: run.id, what: 'heat made', u: heat.u_W(taken.final_K), dof: heat.dof });
  const made = built(made_W, [...chain, { of: madeFit, sensitivity: 1 }]);
  const shed = quotient(made, rise);
  const { final_K } = taken;
  const slope = heatAnswer({ run: run.id, series, line, final_K, shed_W_K: shed.value, made: madeFit, chain });
  causes.push(...slope.causes);
  const balance = closureOf({ series, heat, taken, made, at });
  const relative = made.parts.map((p): Part => ({ cause: p.cause, u: p.u / made_W }));
  // An error of the ambient probe acts on the model like so many watts a kelvin.
  const fromAir = gather([{ of: airCal, sensitivity: shed.value / made_W }]).parts;
  const store = storeOf(
    taken.store && { ...taken.store, u: taken.store.u * taken.widened },
    [...relative, ...fromAir],
    run.id,
    taken.dof,
  );
  causes.push(...store.causes);

  const sump = reading.channel('sump')!;
  // A limit below the start was passed before the run began: there is no time to give.
  const start_K = sump.find((v) => !Number.isNaN(v)) ?? Infinity;
  const read_s = log.time_s[sump.findLastIndex((v) => !Number.isNaN(v))] ?? 0;
  const limits_K = plan.limits_K.filter((limit_K) => limit_K > start_K);
  const crossed = limits_K.map((limit_K) => {
    const hit = firstSustained({ time_s: log.time_s, sump_K: sump, limit_K, sustained_s: plan.sustained_s });
    return { limit_K, hit, nearFinal: reason === null && limit_K > taken.final_K - 3 - 2 * taken.u_K };
  });
  const models = final.tried;
  const bearing = bearingRise(reading, lastRows);
  causes.push(...bearing.causes);

  const result = (
    quantity: QuantityName,
    e: Estimate,
    how: {
      relation: string;
      method: string;
      given: readonly Given[];
      steps?: readonly Step[];
      at?: At;
      notes?: string[];
    },
  ): Result => ({
    quantity,
    at: how.at ?? at,
    estimate: e,
    bound: null,
    class: 'derived from measurement',
    relation: how.relation,
    method: how.method,
    notes: how.notes ?? [],
    given: how.given,
    steps: how.steps ?? [],
  });
  const whole: readonly [number, number] = [0, log.rows];
  const g = givens({
    reading,
    whole,
    lastRows,
    ambient: ambient.mean,
    u: ambient.u,
    made: heat.scatter_W,
    n: series.time_s.length,
  });
  const modelNote = [
    `${taken.model} model; misfit of 20 s means ${writeNumber(taken.misfit_K, 2)} K rms`,
    ...(beyond.u_K > 0 ? [`${writeNumber(100 * beyond.share, 0)} % of its rise lies beyond the last reading`] : []),
  ];
  const results: Result[] = [
    result('final-temperature', finalT, {
      relation: taken.model === 'tail' ? 'tail' : taken.model === 'two-store' ? 'two-store-final' : 'final-temperature',
      method: `heat-up/${taken.model}`,
      given: [g.sump, g.ambient, g.heat],
      steps: models.map((m) => ({
        says: `${m.model}: ${m.why}`,
        formula: 'T∞',
        value: m.final_K - 273.15,
        unit: '°C',
      })),
      notes: modelNote,
    }),
    result('final-rise', rise, {
      relation: 'rise',
      method: `heat-up/${taken.model}`,
      given: [g.ambient],
      steps: [
        { says: 'Final sump temperature', formula: 'T∞', value: taken.final_K - 273.15, unit: '°C' },
        ...felt.steps,
      ],
      notes: modelNote,
    }),
    result('heat-made', made, {
      relation: 'loss-between-shafts',
      method: 'heat-up/heat-at-final-temperature',
      given: [g.torqueIn, g.torqueOut, g.heat],
      steps: [
        {
          says: 'Heat made against viscosity of the sump, carried to the final temperature',
          formula: 'Q(T) = c0 + c1·(ν/ν_end)^½ + c2·(ν_end/ν)',
          value: made_W,
          unit: 'W',
        },
        ...slope.steps,
      ],
    }),
    result('shed', shed, {
      relation: 'shed',
      method: 'heat-up/shed',
      given: [],
      steps: [
        { says: 'Heat made', formula: 'Q', value: made_W, unit: 'W' },
        { says: 'Final rise', formula: 'θ∞', value: rise.value, unit: 'K' },
        { says: 'Shed', formula: 'K = Q/θ∞', value: shed.value, unit: 'W/K' },
      ],
    }),
    ...(store.estimate === null
      ? []
      : [
          result('store', store.estimate, {
            relation: 'store',
            method: `heat-up/${taken.model}`,
            given: [g.sump, g.heat],
            steps: taken.parameters.map((p) => ({
              says: 'Parameter of the model taken',
              formula: p.name,
              value: p.value,
              unit: p.unit,
            })),
            notes: modelNote,
          }),
        ]),
    ...crossed.map(({ limit_K, hit, nearFinal }): Result => {
      const here: At = { ...at, limit_K };
      const notes = nearFinal ? ['within 3 K and its uncertainty of the final temperature: the time says little'] : [];
      const shared = {
        at: here,
        quantity: 'limit-crossing',
        class: 'measured',
        relation: 'sustained-crossing',
        method: 'heat-up/sustained-crossing',
        notes,
      } as const;
      if (hit === null)
        return { ...shared, estimate: null, bound: { side: 'above', at: read_s }, given: [g.sump], steps: [] };
      return {
        ...shared,
        bound: null,
        estimate: built(hit.t_s, [
          { of: cal(probe, limit_K), sensitivity: -1 / hit.slope_K_s },
          {
            of: fitScatter({
              run: run.id,
              what: `crossing of ${Math.round(limit_K - 273.15)} °C`,
              u: hit.u_s,
              dof: 20,
            }),
            sensitivity: 1,
          },
        ]),
        given: [{ ...g.sump, from: logSource(log, 'sump', hit.rows) }],
        steps: [
          { says: 'Slope of the sump at the crossing', formula: 'dT/dt', value: hit.slope_K_s * 60, unit: 'K/min' },
          {
            says: 'Crossing of the parabola through five minutes',
            formula: 'T(t) = limit',
            value: hit.t_s / 60,
            unit: 'min',
          },
        ],
      };
    }),
    ...bearing.results.map((r) => ({ ...r, at })),
    ...(balance === null ? [] : [balance]),
  ];
  const direct = results.filter((r) => r.quantity === 'limit-crossing' || r.quantity === 'bearing-rise');
  return {
    results: reason === null ? results : direct,
    causes,
    models: reason === null ? models : [],
    crossings: crossed.map(({ limit_K, hit, nearFinal }) => ({ limit_K, t_s: hit?.t_s ?? null, nearFinal })),
    fitted:
      reason === null
        ? { channel: 'sump', time_s: [...series.time_s].slice(-taken.curve_K.length), value: [...taken.curve_K] }
        : null,
    remarks: [reason === null ? slope.says : `Only what was read directly is given: ${reason}.`],
    heatSlope_W_K: reason === null ? slope.estimate : null,
    untold: reason,
    why: null,
  };
}
