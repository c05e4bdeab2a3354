import type { Metadata } from 'next';
import Link from 'next/link';
import { DeletedRow } from '@/components/list/deleted-row';
import { t } from '@/components/words/words';
import { store } from '../../open-store-once';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: t('deleted.title') };

/** Visits taken off the list; each can be put back as it was. */
export default async function DeletedPage() {
  const visits = await (await store()).listVisits('deleted');
  return (
    <div className="mx-auto max-w-4xl px-4 pb-12">
      <header className="py-6">
        <Link href="/" className="inline-flex min-h-12 items-center">
          {t('visit.all')}
        </Link>
        <h1 className="text-3xl">{t('deleted.title')}</h1>
      </header>
      {visits.length === 0 ? (
        <p className="panel">{t('deleted.none')}</p>
      ) : (
        <section aria-label={t('deleted.title')} className="panel">
          <p className="text-soft">{t('deleted.what')}</p>
          <ul className="rows mt-2">
            {visits.map(({ id, revision, savedAt, title }) => (
              <DeletedRow key={id} id={id} revision={revision} savedAt={savedAt} {...title} />
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
