import { renderPlainPdf } from '@/components/pdf/render-plain-pdf';
import { t } from '@/components/words/shop-words';
import { fileResponse, paperOf, plain } from '../../answer-stored';
import { store } from '../../open-store-once';
import { fittedWords } from '../fitted-words';
import { visitForWall, wallDocument } from '../wall-document';

export const dynamic = 'force-dynamic';

/** The wall table to hang up, with the fitted simple rule beside it. */
export async function GET(request: Request): Promise<Response> {
  const asked = new URL(request.url).searchParams.get('visit') ?? undefined;
  const chosen = visitForWall(await (await store()).listVisits(), asked);
  if (chosen === undefined) return plain(t('shop.noVisits'), 404);
  const content = await wallDocument(chosen.id);
  if (content === undefined) return plain(t('shop.wall.notYet'), 422);
  const fitted = {
    id: 'fitted',
    title: t('shop.wall.fitted'),
    weight: 'decides' as const,
    sentences: await fittedWords(),
  };
  const pdf = await renderPlainPdf(
    { ...content, sections: [...content.sections, fitted] },
    { paper: paperOf(request) },
  );
  return fileResponse(pdf, 'application/pdf', 'shop', 'wall-table.pdf');
}
