import { defaultPriceBook } from '@/lib/finance/default-price-book';
import { PriceBook } from '@/lib/visit/price-book';

const KEPT = 'keepworth-price-book';

/**
 * The price book that a visit fills its choices from: the shop's, without a signal the one this device saw last, and
 * where neither is known the invented one that Keepworth brings.
 */
export async function shopPriceBook(): Promise<PriceBook> {
  try {
    const answer = await fetch('/shop/price-book.json');
    if (answer.ok) {
      const text = await answer.text();
      const book = read(text);
      if (book !== undefined) {
        keep(text);
        return book;
      }
    }
  } catch {
    // Falls to what this device saw last.
  }
  return read(kept()) ?? defaultPriceBook;
}

function read(text: string): PriceBook | undefined {
  try {
    return PriceBook.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}

function kept(): string {
  try {
    return window.localStorage.getItem(KEPT) ?? '';
  } catch {
    return '';
  }
}

function keep(text: string): void {
  try {
    window.localStorage.setItem(KEPT, text);
  } catch {
    // A browser that may not store asks the office each time.
  }
}
