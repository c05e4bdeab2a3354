import { renderPlainPdf } from '@/components/pdf/render-plain-pdf';
import { t } from '@/components/words/words';
import { appraiseRepair } from '@/lib/appraise/appraise-repair';
import { composeBeforeAfter } from '@/lib/sheet/before-after';
import { answerStored, fileResponse, languageOf, paperOf, plain } from '../../../answer-stored';

/** The sheet after a repair; when nothing was read after one, a sentence says what is missing. */
export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await context.params;
  return answerStored(id, async (visit, _leftOut, trace) => {
    const repair = appraiseRepair(visit);
    if (repair.kind === 'none') return plain(t(`beforeAfter.${repair.why}`), 422);
    const pdf = await renderPlainPdf(composeBeforeAfter({ ...repair, locale: languageOf(request), trace }), {
      paper: paperOf(request),
    });
    return fileResponse(pdf, 'application/pdf', id, 'before-after.pdf');
  });
}
