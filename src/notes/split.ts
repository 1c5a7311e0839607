import matter from 'gray-matter';
import type { Reading } from '../finding/finding.ts';
import type { SourceFile } from '../trial/series.ts';
import { decodeText } from './decode.ts';
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

function decode(file: SourceFile): Reading<NoteText> {
  const read = decodeText(file, largest);
  if (read.ok) return { ok: true, value: read.text, findings: [] };
  const told = {
    'too-large': () => say.noteTooLarge(file.bytes.length),
    'utf-16': say.utf16,
    'zero-bytes': say.notText,
    'not-utf-8': () => say.notUtf8(read.byte),
  }[read.why]();
  return { ok: false, findings: [tell(read.text, { offset: read.offset, length: 0 }, told)] };
}
