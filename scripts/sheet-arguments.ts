/** What `npm run sheet` was asked for. */
export type SheetRequest = {
  readonly visitFile: string;
  readonly pdfFile?: string;
  readonly json: boolean;
  readonly paper: 'letter' | 'a4';
  readonly lang: 'en' | 'es';
};

export const USAGE = `Usage: npm run sheet -- <visit.json> [<out.pdf>] [--paper letter|a4] [--lang en|es] [--json]

Appraises one visit, prints the choices side by side and, when a PDF file is named, writes the sheet.
  --paper letter|a4   paper of the sheet; letter when left out
  --lang en|es        language of the sheet and the table; English when left out
  --json              print the whole appraisal as JSON instead of the table
                      (npm prints two lines of its own first: leave them out with  npm run -s sheet -- ...)

Exit code: 0 done, 2 something in the file or the command to correct, 1 a fault of the program.
Example: npm run sheet -- data-demo/<visit>.json out.pdf`;

/**
 * Reads the command line.
 *
 * @param args what follows the command
 * @returns the request, or that help is wanted, or what is wrong in a sentence (empty when nothing was given at all)
 * Check: tests/scripts/sheet-arguments.test.ts
 */
export function sheetRequest(
  args: readonly string[],
): SheetRequest | { readonly problem: string } | { readonly help: true } {
  const files: string[] = [];
  let json = false;
  let paper: SheetRequest['paper'] = 'letter';
  let lang: SheetRequest['lang'] = 'en';
  if (args.length === 0) return { problem: '' };
  if (args.includes('--help') || args.includes('-h')) return { help: true };
  for (let i = 0; i < args.length; i++) {
    const arg = args[i] ?? '';
    if (arg === '--json') {
      json = true;
    } else if (arg === '--paper' || arg.startsWith('--paper=')) {
      const named = arg === '--paper' ? args[++i] : arg.slice('--paper='.length);
      if (named !== 'letter' && named !== 'a4') {
        return { problem: `Paper must be letter or a4, not "${named ?? ''}".` };
      }
      paper = named;
    } else if (arg === '--lang' || arg.startsWith('--lang=')) {
      const named = arg === '--lang' ? args[++i] : arg.slice('--lang='.length);
      if (named !== 'en' && named !== 'es')
        return { problem: `Language must be en or es, not "${named ?? ''}".` };
      lang = named;
    } else if (arg.startsWith('-') && arg !== '-') {
      return { problem: `There is no option "${arg}".` };
    } else {
      files.push(arg);
    }
  }
  const [visitFile, pdfFile, extra] = files;
  if (visitFile === undefined) return { problem: 'No visit file was named.' };
  if (extra !== undefined) return { problem: `One visit and one PDF at a time; "${extra}" is too much.` };
  return { visitFile, ...(pdfFile === undefined ? {} : { pdfFile }), json, paper, lang };
}
