import type { Metadata } from 'next';
import { VisitScreen } from '@/components/visit/visit-screen';
import { t } from '@/components/words/words';
import { climateOptions } from '../climate-options';

export const metadata: Metadata = { title: t('visit.pageTitle') };

export default function VisitPage() {
  return <VisitScreen climates={climateOptions()} />;
}
