// npm run sheet: one visit file in, the comparison as a table and the sheet as a PDF out.
import { existsSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { type SheetRequest, sheetRequest, USAGE } from './sheet-arguments';
import { issuesText, visitFromFile } from './sheet-visit-file';

const DONE = 0;
const FAULT = 1;
const TO_CORRECT = 2;

/** Does what was asked and gives the exit code. Only the table, or with --json the appraisal, goes to stdout. */
async function runSheet(request: SheetRequest, folder: string): Promise<number> {
  const reading = visitFromFile(path.resolve(folder, request.visitFile));
  if (!reading.ok) {
    console.error(issuesText(request.visitFile, reading.issues));
    return TO_CORRECT;
  }
  if (request.pdfFile !== undefined) {
    const problem = placeProblem(path.resolve(folder, request.pdfFile));
    if (problem !== undefined) return cannotWrite(request.pdfFile, problem);
  }
  // Each part is loaded when it is needed, so that something to correct is told at once.
  const { appraise } = await import('../lib/appraise/appraise');
  const appraisal = appraise(reading.value);
  if (request.json) process.stdout.write(`${JSON.stringify(appraisal, null, 2)}\n`);
  if (request.json && request.pdfFile === undefined) return DONE;
  const { composeSheet } = await import('../lib/sheet/compose-sheet');
  const sheet = composeSheet({ ...appraisal, locale: request.lang });
  if (request.pdfFile !== undefined) {
    const { renderSheetPdf } = await import('../components/pdf/render-sheet-pdf');
    const pdf = await renderSheetPdf(sheet, { paper: request.paper });
    const problem = writeProblem(path.resolve(folder, request.pdfFile), pdf);
    if (problem !== undefined) return cannotWrite(request.pdfFile, problem);
  }
  if (request.json) return DONE;
  const { comparisonTable, tableText } = await import('../lib/sheet/comparison-table');
  process.stdout.write(`${tableText(comparisonTable(sheet, appraisal.comparison))}\n`);
  for (const refused of sheet.pageTwo.doubts.refused) process.stdout.write(`\n${refused}\n`);
  if (request.pdfFile !== undefined) process.stdout.write(`\nSheet written to ${request.pdfFile}\n`);
  return DONE;
}

function cannotWrite(file: string, problem: string): number {
  console.error(`The sheet cannot be written to ${file} (${problem}): name another file.`);
  return TO_CORRECT;
}

/** What is wrong with the place of the sheet, told before any work is done. */
function placeProblem(file: string): string | undefined {
  if (!existsSync(path.dirname(file))) return 'there is no such folder';
  return statSync(file, { throwIfNoEntry: false })?.isDirectory() ? 'it is a folder' : undefined;
}

function writeProblem(file: string, content: Uint8Array): string | undefined {
  try {
    writeFileSync(file, content);
    return undefined;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code ?? String(error);
  }
}

// A reader that has seen enough (head, less) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(DONE);
  throw error;
});

const request = sheetRequest(process.argv.slice(2));
if ('help' in request) {
  process.stdout.write(`${USAGE}\n`);
} else if ('problem' in request) {
  console.error(request.problem === '' ? USAGE : `${request.problem}\n\n${USAGE}`);
  process.exitCode = TO_CORRECT;
} else {
  try {
    process.exitCode = await runSheet(request, process.env.KEEPWORTH_CWD ?? process.cwd());
  } catch (fault) {
    console.error('This is a fault of Keepworth, not of the visit. Report it with the file and these lines:');
    console.error(fault);
    process.exitCode = FAULT;
  }
}
