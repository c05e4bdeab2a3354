import { renderSheetPdf } from '@/components/pdf/render-sheet-pdf';
import { answerStored, fileName } from '../../../answer-stored';

/** The sheet the customer keeps. */
export async function GET(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await context.params;
  const answer = await answerStored(id);
  if (answer instanceof Response) return answer;
  const paper = new URL(request.url).searchParams.get('paper') === 'a4' ? 'a4' : 'letter';
  const pdf = await renderSheetPdf(answer.sheet, { paper });
  return new Response(new Uint8Array(pdf), {
    headers: {
      'content-type': 'application/pdf',
      'content-disposition': `attachment; filename="${fileName(id, 'pdf')}"`,
      'cache-control': 'no-store',
    },
  });
}
