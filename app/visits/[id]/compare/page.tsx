import type { Metadata } from 'next';
import { CompareScreen } from '@/components/compare/compare-screen';
import { t } from '@/components/words/words';

export const metadata: Metadata = { title: t('compare.pageTitle') };

export default function ComparePage() {
  return <CompareScreen />;
}
