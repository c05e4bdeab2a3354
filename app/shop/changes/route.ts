import { t, tCode } from '@/components/words/shop-words';
import { insideShopLimits } from '@/lib/finance/shop-limits';
import { partOf, ShopChange, withChange } from '@/lib/visit/shop-change';
import { store } from '../../open-store-once';
import { cameFromHere } from '../../same-origin';
import { loadShop } from '../load-shop';

/** Puts one thing in force: one more entry of its history, if the shop still is at the revision the owner saw. */
export async function PUT(request: Request): Promise<Response> {
  if (!cameFromHere(request)) return Response.json({ error: t('save.foreign') }, { status: 403 });
  const body = (await request.json().catch(() => undefined)) as
    | { baseRevision?: unknown; change?: unknown }
    | undefined;
  const read = ShopChange.safeParse(body?.change);
  const { baseRevision } = body ?? {};
  if (!read.success || typeof baseRevision !== 'number') {
    return Response.json({ error: t('shop.refused.unreadable') }, { status: 422 });
  }
  if (read.data.kind === 'assumption' && !insideShopLimits(read.data.assumption)) {
    return Response.json({ error: t('shop.refused.outsideLimits') }, { status: 422 });
  }
  const part = partOf(read.data);
  const { shop, revisions } = await loadShop();
  if (revisions[part] !== baseRevision) return stale();
  const changed = withChange(shop, read.data);
  if (!changed.ok) return Response.json({ error: tCode(`shop.refused.${changed.why}`) }, { status: 422 });
  const saved = await (await store()).saveShop({
    part,
    baseRevision,
    data: changed.shop[part],
    savedBy: nameIn(read.data),
    savedAt: new Date().toISOString(),
  });
  if (saved.ok) return Response.json({ revision: saved.revision });
  if (saved.kind === 'stale') return stale();
  return Response.json(
    { error: saved.issues.map(({ label, fix }) => `${label}: ${fix}`).join(' ') },
    { status: 422 },
  );
}

function stale(): Response {
  return Response.json({ error: t('shop.stale') }, { status: 409 });
}

function nameIn(change: ShopChange): string {
  switch (change.kind) {
    case 'rules':
    case 'job':
      return change.version.setBy;
    case 'price':
      return change.price.setBy;
    case 'tax':
      return change.tax.setBy;
    case 'assumption':
      return change.assumption.setBy;
    case 'newItem':
      return change.item.prices[0]?.setBy ?? t('save.byThisOffice');
  }
}
