import { face } from '../../charts/theme.ts';
import type { Block, Chart } from '../../report/page.ts';
import type { Paper } from '../../report/paper.ts';
import { withColours } from '../pictures/colours.ts';
import { drawChart, type Drawn } from '../pictures/draw.ts';
import { isDrawn } from '../site/blocks.ts';
import { everyBlock } from '../site/shown.ts';

/** The charts of a paper, wide and narrow, their colours and their face in them. */
export async function drawingsOf(paper: Paper, colours: ReadonlyMap<string, string>): Promise<(chart: Chart) => Drawn> {
  const literal = (svg: string) => withColours(svg.replace('<svg ', `<svg font-family="${face}" `), colours);
  const drawn = new Map<Chart, Drawn>();
  for (const chart of chartsOf(paper)) {
    if (!isDrawn(chart)) continue;
    const { wide, narrow } = await drawChart(chart);
    drawn.set(chart, { wide: literal(wide), narrow: literal(narrow) });
  }
  return (chart) => {
    const drawing = drawn.get(chart);
    if (drawing === undefined) throw new Error(`No picture was drawn for ${chart.id}`);
    return drawing;
  };
}

const chartsOf = (paper: Paper): readonly Chart[] =>
  paper.chapters
    .flatMap(({ sections }) => sections.flatMap(({ blocks }): readonly Block[] => everyBlock(blocks)))
    .flatMap((block) => (block.kind === 'chart' ? [block.chart] : []));
