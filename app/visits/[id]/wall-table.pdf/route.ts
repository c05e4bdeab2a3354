import { renderPlainPdf } from '@/components/pdf/render-plain-pdf';
import { appraise } from '@/lib/appraise/appraise';
import { wallTable } from '@/lib/finance/shop-rules/wall-table';
import { composeWallTable, wallTableOf } from '@/lib/sheet/wall-table';
import { answerStored, fileResponse, languageOf, paperOf } from '../../../answer-stored';

/** The shop's wall table, made for a house, climate and tariff like this visit's. */
export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await context.params;
  return answerStored(id, async (visit) => {
    const appraisal = appraise(visit);
    const table = composeWallTable(wallTableOf(appraisal, wallTable(appraisal), languageOf(request)));
    return fileResponse(
      await renderPlainPdf(table, { paper: paperOf(request) }),
      'application/pdf',
      id,
      'wall-table.pdf',
    );
  });
}
