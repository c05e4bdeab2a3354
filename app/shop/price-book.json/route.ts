import { loadShop } from '../load-shop';

export const dynamic = 'force-dynamic';

/** The shop's prices, for a visit that fills a choice from them. */
export async function GET(): Promise<Response> {
  const { shop } = await loadShop();
  return Response.json(shop.prices, { headers: { 'cache-control': 'no-store' } });
}
