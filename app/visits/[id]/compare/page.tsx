import type { Metadata } from 'next';
import { CompareScreen } from '@/components/compare/compare-screen';
import { t } from '@/components/words/words';

export const metadata: Metadata = { title: t('compare.pageTitle') };

export default async function ComparePage(props: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { for: reader } = await props.searchParams;
  return <CompareScreen forCustomer={reader === 'customer'} />;
}
