import { t } from '@/components/words/words';

export default function Loading() {
  return (
    <p role="status" className="mx-auto max-w-4xl px-4 py-12 text-lg">
      {t('app.loading')}
    </p>
  );
}
