import matter from 'gray-matter';
import type { Finding, Reading } from '../finding/finding.ts';
import { lineStarts } from '../finding/place.ts';
import type { SourceFile } from '../trial/series.ts';
import { type Note, type NoteText, type Span, tell, type Told } from './note.ts';
import * as say from './texts-file.ts';
import { readYaml, type YamlRead } from './yaml.ts';

const largest = 400_000;

/** The one reader of a note: bytes to a tree with places and the words under it. Nothing in a note is ever run. */
export function splitNote(file: SourceFile): Reading<Note> {
  const decoded = decode(file);
  if (!decoded.ok) return decoded;
  const note = decoded.value;
  const refused = edges(note);
  if (refused) return { ok: false, findings: [tell(note, refused.span, refused.told)] };

  // gray-matter keeps a hidden store of earlier texts unless it is given options
  const parts = matter(note.text, { language: 'yaml', engines });
  const data: Readonly<Record<string, unknown>> = parts.data;
  const yaml = (data['read'] as YamlRead | undefined) ?? { front: emptyFront, troubles: [] };
  const findings = yaml.troubles.map((t) => tell(note, t.span, t.told));
  if (!yaml.front) return { ok: false, findings };
  return { ok: true, value: { ...note, front: yaml.front, body: parts.content }, findings };
}

const fence = '---';
const emptyFront = { kind: 'group', entries: [], span: { offset: 0, length: fence.length } } as const;

const refuse = {
  parse(): never {
    throw new Error('only YAML front matter reaches a reader');
  },
  stringify: () => '',
};

/** The text handed over begins with the line end after the opening fence, hence the shift. */
const engines = {
  yaml: { parse: (text: string) => ({ read: readYaml(text, fence.length) }), stringify: () => '' },
  js: refuse,
  javascript: refuse,
  json: refuse,
  toml: refuse,
};

/** The first line and the closing line, which the splitter would take too freely. */
function edges({ text, starts }: NoteText): { span: Span; told: Told } | null {
  const line = (n: number): string => text.slice(starts[n], (starts[n + 1] ?? text.length + 1) - 1);
  const first = line(0);
  if (text.trim() === '') return { span: { offset: 0, length: 0 }, told: say.noteEmpty() };
  if (first !== fence) return { span: { offset: 0, length: first.length }, told: say.frontMatterStart(first) };
  for (let n = 1; n < starts.length; n++) {
    const here = line(n);
    const span = { offset: starts[n] ?? 0, length: here.length };
    if (here === fence) return null;
    if (here.startsWith(fence)) return { span, told: say.frontMatterEnd(here) };
    if (here.startsWith('%')) return { span, told: say.directive(here) };
  }
  return { span: { offset: 0, length: fence.length }, told: say.frontMatterUnclosed() };
}

function decode({ path, bytes }: SourceFile): Reading<NoteText> {
  const whole = bytes.length <= largest;
  const kept = bytes.subarray(0, whole ? bytes.length : 1000);
  const loose = asNote(path, new TextDecoder('utf-8').decode(kept));
  const no = (offset: number, told: Told): { ok: false; findings: Finding[] } => ({
    ok: false,
    findings: [tell(loose, { offset, length: 0 }, told)],
  });
  if (!whole) return no(0, say.noteTooLarge(bytes.length));
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) return no(0, say.utf16());
  if (bytes.includes(0)) return no(0, say.notText());
  const good = goodLength(bytes);
  if (good === bytes.length) return { ok: true, value: loose, findings: [] };
  return no(
    asNote(path, new TextDecoder('utf-8').decode(bytes.subarray(0, good))).text.length,
    say.notUtf8(bytes[good] ?? 0),
  );
}

function asNote(file: string, decoded: string): NoteText {
  const text = decoded.replace(/\r\n?/g, '\n');
  return { file, text, starts: lineStarts(text) };
}

/** Bytes up to the first one that is not UTF-8, by halving. */
function goodLength(bytes: Uint8Array): number {
  if (decodes(bytes, false)) return bytes.length;
  let good = 0;
  let bad = bytes.length + 1;
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (decodes(bytes.subarray(0, middle), true)) good = middle;
    else bad = middle;
  }
  return Math.min(good, bytes.length - 1);
}

function decodes(bytes: Uint8Array, cut: boolean): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: cut });
    return true;
  } catch {
    return false;
  }
}
