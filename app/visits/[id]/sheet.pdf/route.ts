import { renderSheetPdf } from '@/components/pdf/render-sheet-pdf';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { answerStored, fileResponse, languageOf, paperOf } from '../../../answer-stored';

/** The sheet the customer keeps. */
export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await context.params;
  return answerStored(id, async (visit, leftOut, trace) => {
    const sheet = composeSheet({ ...appraise(visit), locale: languageOf(request), leftOut, trace });
    const pdf = await renderSheetPdf(sheet, { paper: paperOf(request) });
    return fileResponse(new Uint8Array(pdf), 'application/pdf', id, 'pdf');
  });
}
