import { describe, expect, it } from 'vitest';
import { blocks } from '../../../src/finding/finding.ts';
import { allRelations } from '../../../src/physics/all.ts';
import { offChecks } from '../../../src/physics/held.ts';
import { sealTorqueRelation } from '../../../src/physics/seals.ts';
import { makeBook } from '../../../src/pipeline.ts';
import { smallDemo } from '../../scenario/small.ts';

describe('relations are held to their checks in each build', () => {
  it('and none is off today', () => {
    expect(offChecks(allRelations, 'book.md')).toEqual([]);
  });

  it('so that a slip of the program stops what would be published, in one finding a check', () => {
    const slipped = { ...sealTorqueRelation, of: () => 0.3 };
    const found = offChecks([slipped], 'book.md');
    expect(found.map(({ code }) => code)).toEqual(['relation-off', 'relation-off']);
    expect(found[0]!.says).toContain('gives 0.30000000 where');
    expect(blocks(found)).toBe(true);
  });

  it('as a build asks them', () => {
    const relation = allRelations[0] as { of: (inputs: never) => number | null };
    const before = relation.of;
    relation.of = () => null;
    try {
      const { findings } = makeBook({ files: smallDemo().filter(({ path }) => path === 'book.md'), audience: 'house' });
      expect(findings.map(({ code }) => code)).toContain('relation-off');
    } finally {
      relation.of = before;
    }
  });
});
