import { seconds_s } from '../quantity/timecode.ts';
import type { Span, Told } from './note.ts';
import * as say from './texts-captions.ts';

/** One cue of a WebVTT file; `text` begins at `offset` of the file. */
export interface VttCue {
  readonly from_s: number;
  readonly to_s: number;
  /** The two times on the time line. */
  readonly times: Span;
  readonly text: string;
  readonly offset: number;
}

export interface VttRead {
  readonly cues: readonly VttCue[];
  readonly troubles: readonly { readonly span: Span; readonly told: Told }[];
}

interface Line {
  readonly text: string;
  readonly offset: number;
}

/**
 * Cues of a WebVTT file whose line ends are made one. Blocks are parted as a player parts them; what a player would pass over
 * without a word is told here. NOTE, STYLE, REGION and ATTRIBUTES blocks, identifiers and
 * settings of cues are passed over.
 *
 * source             WebVTT: The Web Video Text Tracks Format (W3C), sections on syntax and on parsing
 */
export function readVtt(text: string): VttRead {
  const lines = linesOf(text);
  const first = lines[0]!;
  if (!/^WEBVTT(?:[ \t].*)?$/.test(first.text) || isTime(first))
    return { cues: [], troubles: [{ span: spanOf(first), told: say.noHeader(first.text) }] };
  const cues: VttCue[] = [];
  const troubles: { span: Span; told: Told }[] = [];
  const [head, blocks] = parted(lines.slice(1));
  const odd = head.find((line) => !/^[A-Za-z][\w-]*[ \t]*[:=]/.test(line.text));
  if (odd) troubles.push({ span: spanOf(odd), told: say.headerLine() });
  for (const block of blocks) {
    const read = readBlock(block);
    if (read === null) continue;
    if ('told' in read) troubles.push(read);
    else cues.push(read);
  }
  return { cues, troubles };
}

const linesOf = (text: string): Line[] => {
  let offset = 0;
  return text.split('\n').map((line) => {
    const at = offset;
    offset += line.length + 1;
    return { text: line, offset: at };
  });
};

const isTime = (line: Line): boolean => line.text.includes('-->');
const spanOf = ({ text, offset }: Line): Span => ({ offset, length: text.length });

/** It begins as a time line does; other words before the arrow are words of a cue. */
const looksTimed = (line: Line): boolean => /^[\s\d:.,]*-->/.test(line.text);

/** Lines of the head, and blocks: an empty line ends a block, and a time line that is not its first begins another. */
function parted(lines: readonly Line[]): [head: Line[], blocks: Line[][]] {
  const head: Line[] = [];
  let i = 0;
  for (; i < lines.length && lines[i]!.text !== '' && !isTime(lines[i]!); i++) head.push(lines[i]!);
  const blocks: Line[][] = [];
  let open: Line[] | null = null;
  for (const line of lines.slice(i)) {
    if (line.text === '') open = null;
    else if (open === null || (looksTimed(line) && !isNote(open) && (open.length > 1 || isTime(open[0]!))))
      blocks.push((open = [line]));
    else open.push(line);
  }
  return [head, blocks];
}

const isNote = ([first]: readonly Line[]): boolean => first !== undefined && /^NOTE(?:[ \t]|$)/.test(first.text);

function readBlock(block: readonly Line[]): VttCue | { span: Span; told: Told } | null {
  const [first, second] = [block[0]!, block[1]];
  if (isNote(block)) {
    const arrow = block.find(isTime);
    return arrow ? { span: spanOf(arrow), told: say.timeInNote() } : null;
  }
  const at = isTime(first) ? 0 : second && isTime(second) ? 1 : -1;
  if (at < 0)
    return /^(STYLE|REGION|ATTRIBUTES)[ \t]*$/.test(first.text) ? null : { span: spanOf(first), told: say.noTimes() };
  const line = block[at]!;
  const times = readTimes(line);
  if ('told' in times) return times;
  const [said, end] = [block[at + 1], block[block.length - 1]!];
  const arrow = block.slice(at + 1).find(isTime);
  if (arrow) return { span: { offset: arrow.offset + arrow.text.indexOf('-->'), length: 3 }, told: say.arrowInWords() };
  const text = block.slice(at + 1).map((l) => l.text);
  return { ...times, text: text.join('\n'), offset: said?.offset ?? end.offset + end.text.length };
}

const time = /^(?:(\d{2,4}):)?([0-5]\d):([0-5]\d)\.(\d{3})$/;

function readTimes({ text, offset }: Line): Pick<VttCue, 'from_s' | 'to_s' | 'times'> | { span: Span; told: Told } {
  const parts = /^([ \t]*)(.*?)([ \t]*-->[ \t]*)([^ \t]*)/s.exec(text)!;
  const [, lead = '', from = '', arrow = '', to = ''] = parts;
  const at = [lead.length, lead.length + from.length + arrow.length] as const;
  const read = [from, to].map((typed) => {
    const found = time.exec(typed);
    return found ? seconds_s(found[1] ?? '0', found[2]!, found[3]!, found[4]!) : null;
  });
  const [from_s = null, to_s = null] = read;
  if (from_s === null || to_s === null) {
    const [typed, start] = from_s === null ? [from, at[0]] : [to, at[1]];
    return { span: { offset: offset + start, length: typed.length }, told: say.badTime(typed) };
  }
  if (to_s <= from_s) return { span: { offset: offset + at[1], length: to.length }, told: say.endNotAfter(from, to) };
  return { from_s, to_s, times: { offset: offset + at[0], length: at[1] - at[0] + to.length } };
}
