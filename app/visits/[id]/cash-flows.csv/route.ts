import { appraise } from '@/lib/appraise/appraise';
import { cashFlowCsv } from '@/lib/sheet/cash-flow-csv';
import { answerStored, fileResponse, languageOf } from '../../../answer-stored';

/** Marks the text as UTF-8 for spreadsheets, which otherwise take it for an older code. */
const byteOrderMark = '\ufeff';

/** Yearly cash flow of every choice for a spreadsheet. */
export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await context.params;
  return answerStored(id, (visit) =>
    fileResponse(
      `${byteOrderMark}${cashFlowCsv(appraise(visit).comparison, languageOf(request))}`,
      'text/csv; charset=utf-8',
      id,
      'cash-flows.csv',
    ),
  );
}
