import { describe, expect, it } from 'vitest';
import { proposedMap, type ProposedMap } from '../../../src/logs/proposed-map.ts';

// Heads as different loggers write them; all invented.
const of = (text: string): ProposedMap => {
  const map = proposedMap('log.csv', new TextEncoder().encode(text));
  if (Array.isArray(map)) throw new Error(JSON.stringify(map));
  return map as ProposedMap;
};
const columns = (text: string) => of(text).columns.map(({ header, is, unit }) => [header, is, unit]);

describe('a column map proposed from a logger file', () => {
  it('takes units from brackets, decimal commas and a head below remarks', () => {
    const map = of(
      '# logger 7\n# all at once\nTime [s];Pinion speed [rpm];Torque in [N·m];Oil temp [°C]\n0,0;1321;1,760;60,05\n1,0;1321,8;1,769;60,03\n',
    );
    expect(map).toMatchObject({ delimiter: ';', decimal: ',', header: 3, unitsRow: null });
    expect(map.clock).toEqual({ column: 'Time [s]', unit: 's' });
    expect(map.columns).toEqual([
      { header: 'Pinion speed [rpm]', is: 'pinion-speed', unit: 'rpm', range: [1321, 1321.8] },
      { header: 'Torque in [N·m]', is: 'torque-in', unit: 'N·m', range: [1.76, 1.769] },
      { header: 'Oil temp [°C]', is: 'sump', unit: '°C', range: [60.03, 60.05] },
    ]);
  });

  it('takes units from a row of their own', () => {
    const map = of(
      't\tn_in\ttq_in\tT_sump\tT_amb\nmin\trpm\tlbf·ft\t°F\t°F\n0.0\t100\t1\t140\t70\n0.5\t100\t1\t141\t70\n',
    );
    expect(map).toMatchObject({ delimiter: '\t', header: 1, unitsRow: 2, clock: { column: 't', unit: 'min' } });
    expect(map.columns.map(({ is, unit }) => [is, unit])).toEqual([
      ['pinion-speed', 'rpm'],
      ['torque-in', 'lbf·ft'],
      ['sump', '°F'],
      ['ambient', '°F'],
    ]);
  });

  it('takes a bare word at the end for a unit only where it is one of what the column is', () => {
    expect(columns('t_s,n_in_rpm,tq_in,n_out_l,T_sump_C\n0,100,1,30,60\n1,100,1,30,60\n')).toEqual([
      ['n_in_rpm', 'pinion-speed', 'rpm'],
      ['tq_in', 'torque-in', null],
      ['n_out_l', 'output-speed', null],
      ['T_sump_C', 'sump', expect.anything()],
    ]);
  });

  it('leaves to a person what the names do not say, and what two columns could be', () => {
    expect(columns('t_s,speed,T3,sump left,sump right\n0,100,20,60,61\n1,100,20,60,61\n')).toEqual([
      ['speed', null, null],
      ['T3', null, null],
      ['sump left', null, null],
      ['sump right', null, null],
    ]);
    expect(of('run,T_sump\n1,60\n2,61\n').clock).toBeNull();
  });

  it('does not call a column what its unit is not', () => {
    expect(columns('t_s,skin [rpm]\n0,1\n1,2\n')).toEqual([['skin [rpm]', null, 'rpm']]);
  });

  it('reads a clock of hours and minutes, and a column of events', () => {
    const map = of('Time,Sump [°C],Event\n0:00:00,60,\n0:00:01,60,step 200\n0:00:02,60,\n');
    expect(map.clock).toEqual({ column: 'Time', unit: 'h:mm:ss' });
    expect(map.columns[1]).toMatchObject({ header: 'Event', is: 'event' });
  });

  it.each([
    ['no table', 'hello\n', 'log-no-table'],
    ['numbers without a head', '1,2\n3,4\n', 'log-no-table'],
    ['nothing', '', 'log-no-table'],
    ['a zip', 'PK\u0003\u0004\0\0', null],
  ])('refuses %s with one finding', (_, text, code) => {
    const told = proposedMap('log.csv', new TextEncoder().encode(text));
    expect(Array.isArray(told)).toBe(true);
    expect(told).toHaveLength(1);
    if (code !== null) expect(told).toMatchObject([{ code, level: 'error', place: { file: 'log.csv', line: 1 } }]);
  });
});
