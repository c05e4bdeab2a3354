import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { leftOutChoices } from '@/components/appraisal/left-out';
import { readTyped } from '@/components/appraisal/read-typed';
import { fieldBook } from '@/components/draft/build-field-book';
import { issueSentence } from '@/components/form/issue-words';
import { SheetPage } from '@/components/sheet/sheet-page';
import { t } from '@/components/words/words';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { localeOf } from '@/lib/sheet/languages';
import { visitHash } from '@/lib/store/visit-hash';
import { draftOf } from '../../../draft-of';
import { store } from '../../../open-store-once';

export const metadata: Metadata = { title: t('sheet.pageTitle') };

/** The sheet as a page, made from what is saved. */
export default async function Page(props: {
  params: Promise<{ id: string }>;
  searchParams: Promise<{ lang?: string | string[] }>;
}) {
  const { id } = await props.params;
  const { lang } = await props.searchParams;
  const locale = localeOf(typeof lang === 'string' ? lang : undefined);
  const stored = await (await store()).loadVisit(id);
  if (stored === undefined || stored.deleted) notFound();
  const draft = draftOf(stored.draft);
  const book = fieldBook();
  const { visit, issues } = readTyped(draft, book);
  return (
    <div className="mx-auto max-w-5xl px-4 pb-8">
      <p className="no-print">
        <Link href={`/visits/${id}/compare`} className="mr-6 inline-flex min-h-12 items-center">
          {t('sheet.back')}
        </Link>
        {locale === 'es' ? (
          <Link href={`/visits/${id}/sheet`} className="inline-flex min-h-12 items-center">
            {t('sheet.inEnglish')}
          </Link>
        ) : (
          <Link href={`/visits/${id}/sheet?lang=es`} lang="es" className="inline-flex min-h-12 items-center">
            {t('sheet.inSpanish')}
          </Link>
        )}
      </p>
      {visit === undefined ? (
        <>
          <h1 className="text-2xl">{t('results.none')}</h1>
          <ul className="list-disc pl-6">
            {issues.map((issue) => (
              <li key={issue.path}>{issueSentence(issue, book)}</li>
            ))}
          </ul>
        </>
      ) : (
        <SheetPage
          sheet={composeSheet({
            ...appraise(visit),
            locale,
            leftOut: leftOutChoices(draft, issues, book),
            trace: { revision: stored.revision, hash: visitHash(visit) },
          })}
        />
      )}
    </div>
  );
}
