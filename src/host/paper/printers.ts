import { browserPrinter } from './browser.ts';
import type { Printer } from './printer.ts';
import { typstPrinter } from './typst.ts';

/**
 * What sets the paper: Typst where it is installed, an installed browser where it is not or where one is named. A sentence
 * that says what to install where there is neither; nothing is ever fetched.
 */
export async function printerFor(
  browser: string | null,
  typst: () => Promise<Printer | null> = typstPrinter,
): Promise<Printer | string> {
  if (browser !== null)
    return (
      browserPrinter(browser) ??
      `${browser} is no program that can be run. Write  --browser  with the path of an installed browser.`
    );
  return (await typst()) ?? browserPrinter('chromium') ?? browserPrinter('chromium-browser') ?? neither;
}

const neither = `Nothing is installed that sets a paper. Write  npm install  in the folder of the tool, without leaving out optional packages;
or install a browser of the Chromium kind and write  --browser  with the path of its program. Nothing was written.`;
