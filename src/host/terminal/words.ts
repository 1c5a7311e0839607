import { BuiltByAnother } from '../site/staged.ts';
import { outsideOf, outsideSaid } from './outside.ts';
import { packageVersion } from '../site/root.ts';

export const usage = `Usage
  dipmark start   [folder] [--log file.csv]    six questions, and a book that builds at once
  dipmark check   [folder]                     findings only
  dipmark build   [folder] [--out _site]       the site of the whole book, for the house
  dipmark build   [folder] --public            only what is marked shown-to: public
  dipmark preview [folder] [--port 8080]       build, serve on this machine only, rebuild on save
  dipmark print   CR-01 [folder]               one client copy as a PDF, as of the day it was issued
  dipmark print   [folder] --cards             run cards of what the plan still wants, to fill in by hand
  dipmark pack    [folder] --out ../pack       one folder and one zip that build again without a network
  dipmark check   [pack]   --deep              every file of a pack against its sum
  dipmark pin     [folder] --part 4-uphill     keep what a part shows on its day; shown first, written with --write

The folder is the one that holds book.md; without one, the folder you stand in.

Options
  --log        a logger file that the column map is proposed from (start)
  --lab --question --baseline --candidate --fill --oil
               the six answers, where nobody can be asked (start)
  --out        where the site, the cards, the PDF or the pack go (build, print, pack)
  --public     what strangers may see (check, build, preview)
  --json       findings as JSON on standard output, for other programs (check, build)
  --series     of one series only (print, pin)
  --part       the part, by the name of its file (pin)
  --write      write the pins for good (pin)
  --sheet      A4 or letter (print)
  --browser    the installed browser that is to set the PDF, by its program (print)
  --all        also of what is run already (print)
  --port       0 takes any free one (preview)
  --help, -h   this text
  --version    the version

Exit status: 0 clean, 1 findings that stop publication, 2 wrong call.
`;

export const version = (): string => packageVersion;

/** What is said when a command cannot go on. Only a fault of our own shows its inside. */
export function fault(error: unknown): string {
  if (error instanceof BuiltByAnother) return error.message;
  const outside = outsideOf(error);
  if (outside !== null) return outsideSaid(outside);
  const inside = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return `This is a fault of dipmark, not of your notes. Please report it with this text:\n${inside}`;
}
