'use client';

import Link from 'next/link';
import { type ReactNode, useEffect, useState } from 'react';
import { AppraisalHolder } from '@/components/appraisal/appraisal-context';
import { DraftHolder } from '@/components/draft/draft-context';
import type { FieldBook } from '@/components/draft/field-book';
import { type LocalCopy, readLocalCopy } from '@/components/draft/local-copy';
import { t } from '@/components/words/words';

type Found = { readonly id: string; readonly copy: LocalCopy | undefined };

/** Visit of an address: "/visits/<id>", "/visits/<id>/compare", or "/kept/visit?visit=<id>". */
function idOfAddress({ pathname, search }: Location): string {
  const found = /^\/visits\/([a-z0-9-]+)/.exec(pathname)?.[1];
  return found ?? new URLSearchParams(search).get('visit') ?? '';
}

/** A visit drawn from this device's own copy: what opens where the office cannot be reached. */
export function KeptVisit(props: { readonly book: FieldBook; readonly children: ReactNode }) {
  const [found, setFound] = useState<Found | undefined>(undefined);
  useEffect(() => {
    const id = idOfAddress(window.location);
    setFound({ id, copy: readLocalCopy(id) });
  }, []);
  if (found === undefined) {
    return (
      <p role="status" className="mx-auto max-w-4xl px-4 py-12 text-lg">
        {t('app.loading')}
      </p>
    );
  }
  const { id, copy } = found;
  if (copy === undefined) return <NotHere />;
  return (
    <DraftHolder id={id} draft={copy.draft} revision={copy.baseRevision} book={props.book}>
      <AppraisalHolder>{props.children}</AppraisalHolder>
    </DraftHolder>
  );
}

function NotHere() {
  return (
    <div className="mx-auto max-w-4xl px-4 py-12">
      <h1 className="text-3xl">{t('kept.notHere')}</h1>
      <p className="mt-3">{t('kept.notHereWhy')}</p>
      <div className="mt-6 flex flex-wrap gap-3">
        <button type="button" className="press press-main" onClick={() => window.location.reload()}>
          {t('error.again')}
        </button>
        <Link className="press" href="/">
          {t('error.list')}
        </Link>
      </div>
    </div>
  );
}
