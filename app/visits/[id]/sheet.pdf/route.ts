import { renderSheetPdf } from '@/components/pdf/render-sheet-pdf';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { answerStored, fileResponse } from '../../../answer-stored';

/** The sheet the customer keeps. */
export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await context.params;
  const paper = new URL(request.url).searchParams.get('paper') === 'a4' ? 'a4' : 'letter';
  return answerStored(id, async (visit, leftOut) => {
    const sheet = composeSheet({ ...appraise(visit), locale: 'en', leftOut });
    const pdf = await renderSheetPdf(sheet, { paper });
    return fileResponse(new Uint8Array(pdf), 'application/pdf', id, 'pdf');
  });
}
