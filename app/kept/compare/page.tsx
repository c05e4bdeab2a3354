import type { Metadata } from 'next';
import { CompareScreen } from '@/components/compare/compare-screen';
import { fieldBook } from '@/components/draft/build-field-book';
import { KeptVisit } from '@/components/offline/kept-visit';
import { t } from '@/components/words/words';

export const dynamic = 'force-static';
export const metadata: Metadata = { title: t('compare.pageTitle') };

/** Stands in for every comparison where there is no signal. */
export default function KeptComparePage() {
  return (
    <KeptVisit book={fieldBook()}>
      <CompareScreen />
    </KeptVisit>
  );
}
