import type { Finding } from '../finding/finding.ts';
import type { Book } from '../trial/book.ts';
import { assumed, group, headFields, optional, recommended, required, shaped, text, words, yesNo } from './fields.ts';
import type { Note } from './note.ts';
import { headOf } from './record.ts';
import { readFields } from './read.ts';

/** `book.md` */
export const bookKind = group({
  name: required(text('The Quillstone book'), 'It is the name of the whole site.'),
  lab: required(text('Quillstone Axle Room'), 'Readers want to know whose bench it was.'),
  hook: recommended(text('How many watts is the shape of a bowl worth?'), 'It is the first sentence of the home page.'),
  contact: required(
    text('corrections@quillstone.example'),
    'Somebody who finds a mistake needs to know where to send it.',
  ),
  address: optional(
    shaped('https://quillstone.example', '^https?://[^\\s/]+(/\\S*)?$', 'a web address that begins with https://'),
    'The feed and the sitemap need the address at which the book will stand.',
  ),
  'path-prefix': assumed(
    shaped('/axles/', '^/([^\\s]*/)?$', 'a path that begins and ends with /'),
    '/',
    'Where on its address the book stands.',
  ),
  language: assumed(
    shaped('en', '^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$', 'a language code such as en'),
    'en',
    'Screen readers choose their voice by it.',
  ),
  'units-shown': assumed(
    words('si', 'si-and-us'),
    'si',
    'SI stands first in any case; US customary may stand in brackets.',
  ),
  licence: required(text('CC-BY-4.0'), 'Without a licence nobody may pass the figures on.'),
  invented: assumed(yesNo, 'false', 'Invented data say so on every page.'),
  ...headFields,
});

/** A book is always made: what could not be read stands as a plain stand-in, so that the series are still shown. */
export function readBookNote(note: Note): { readonly book: Book; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const { values: v } = readFields(bookKind, note.front, { note, findings });
  return {
    findings,
    book: {
      ...headOf(note),
      name: v.name ?? 'Unnamed book',
      lab: v.lab ?? 'Unnamed lab',
      hook: v.hook ?? '',
      contact: v.contact ?? '',
      address: v.address ?? null,
      pathPrefix: v['path-prefix'] ?? '/',
      language: v.language ?? 'en',
      unitsShown: v['units-shown'] ?? 'si',
      licence: v.licence ?? 'no licence stated',
      invented: v.invented ?? false,
    },
  };
}

/** For a book whose `book.md` cannot be read at all. */
export const standIn = (file: string): Book => ({
  file,
  shownTo: 'house',
  body: '',
  places: new Map(),
  typed: new Map(),
  name: 'Unnamed book',
  lab: 'Unnamed lab',
  hook: '',
  contact: '',
  address: null,
  pathPrefix: '/',
  language: 'en',
  unitsShown: 'si',
  licence: 'no licence stated',
  invented: false,
});
