import type { Metadata } from 'next';
import { fieldBook } from '@/components/draft/build-field-book';
import { KeptVisit } from '@/components/offline/kept-visit';
import { VisitScreen } from '@/components/visit/visit-screen';
import { t } from '@/components/words/words';
import { climateOptions } from '../../visits/climate-options';

export const dynamic = 'force-static';
export const metadata: Metadata = { title: t('visit.pageTitle') };

/** Stands in for every visit's page where there is no signal. */
export default function KeptVisitPage() {
  return (
    <KeptVisit book={fieldBook()}>
      <VisitScreen climates={climateOptions()} />
    </KeptVisit>
  );
}
