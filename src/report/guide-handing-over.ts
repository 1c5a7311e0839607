import type { GuidePage } from './guide-pages.ts';
import { says, said, steps } from './guide-words.ts';
import { section } from './spans.ts';

/** Putting the site where others read it, and leaving the book so that it can be found again. */
export const handingOver: GuidePage = {
  id: 'handing-over',
  title: 'Handing over',
  lead: 'Where the site goes, and how the whole of it is left so that somebody else can build it in ten years.',
  sections: [
    section(
      'public',
      'For strangers',
      [
        steps(
          '`shown-to: public` in each note that strangers may read; everything else is for the house, and the public site says how many notes it holds back.',
          'In `book.md` the address at which it will stand, and where on it: `address: https://tests.example` and `path-prefix: /axles/`. Feed, sitemap and permanent addresses are made from them. Links inside are relative, so the same folder also works from a disk.',
          '`dipmark build --public --out _site`. A finding that stops publication leaves the last good site as it was.',
        ),
      ],
      [
        {
          name: 'Look first.',
          text: said(
            'Open `_site/index.html` from the disk. What is there is what strangers get: search, tables and pictures included.',
          ),
        },
      ],
    ),
    section('hosts', 'Three kinds of host', [
      says('The site is a folder of plain files. It needs no program on the host and asks for nothing outside.'),
      steps(
        '**A plain web host.** Copy the folder to the place that the path prefix names, new files first and old ones away afterwards, as in `rsync -a --delete-after _site/ host:/srv/www/axles/`. Let the host send `index.html` for a folder.',
        '**An object store.** Upload the folder with the type of each file by its ending, name `index.html` as the page of a folder, and let the store serve it as a website. Give old pages a short life in caches: a correction should be seen within minutes.',
        '**The pages service of a forge.** Let its runner do `npm ci` and `npx dipmark build --public --out _site`, and hand over that folder as it is, with any site generator of the service switched off. The path prefix is then the name of the project, `/my-book/`.',
      ),
      says(
        'The few scripts of the pages come with them, as files of their own, and each page carries its content policy. A host that can send headers may send the same policy once more.',
      ),
    ]),
    section('leave', 'For those who come after', [
      steps(
        '`dipmark pack --out ../pack` writes one folder and one zip: notes, raw files, pins, site, and the tool itself with all that it needs. It builds again without a network.',
        '`dipmark check ../pack --deep` holds every file against its sum, and names the figures that lose their support where one is gone or not as it was.',
        'Keep two of them in two places. The films may lie elsewhere: `kept:` in the note says where.',
        'The book says by `format: 1` in `series.md` by which rules it is read. What a later version wants changed stands in its list of changes.',
      ),
    ]),
  ],
};
