import { renderPlainPdf } from '@/components/pdf/render-plain-pdf';
import { appraise } from '@/lib/appraise/appraise';
import { composeRecord } from '@/lib/sheet/record';
import { answerStored, fileResponse, languageOf, paperOf } from '../../../answer-stored';

/** The technician's record: everything read, worked out and assumed, with its sources. */
export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await context.params;
  return answerStored(id, async (visit, _leftOut, trace) => {
    const record = composeRecord({ ...appraise(visit), locale: languageOf(request), trace });
    return fileResponse(
      await renderPlainPdf(record, { paper: paperOf(request) }),
      'application/pdf',
      id,
      'record.pdf',
    );
  });
}
