import { appraise } from '@/lib/appraise/appraise';
import { answerStored, jsonFile } from '../../../answer-stored';

/** Everything the line found for this visit, as data. */
export async function GET(
  _request: Request,
  context: { params: Promise<{ id: string }> },
): Promise<Response> {
  const { id } = await context.params;
  return answerStored(id, (visit) => jsonFile(appraise(visit), id, 'json'));
}
