import { PriceBook } from '../visit/price-book';
import book from './data/price-book.json';

/** Invented prices a shop starts from, marked so. Check: tests/finance/price-from-book.test.ts */
export const defaultPriceBook: PriceBook = PriceBook.parse(book);
