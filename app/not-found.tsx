import Link from 'next/link';
import { KeptInstead } from '@/components/offline/kept-instead';
import { t } from '@/components/words/words';

export const metadata = { title: t('notFound.title') };

export default function NotFound() {
  return (
    <div className="mx-auto max-w-4xl px-4 py-12">
      <h1 className="text-3xl">{t('notFound.title')}</h1>
      <p className="mt-3">{t('notFound.what')}</p>
      <KeptInstead />
      <Link className="press press-main mt-6" href="/">
        {t('error.list')}
      </Link>
    </div>
  );
}
