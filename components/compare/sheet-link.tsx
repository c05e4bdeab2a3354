'use client';

import { useState } from 'react';
import { useDraftState, useVisitId } from '@/components/draft/draft-context';
import { listAt, textAt } from '@/components/draft/draft-tree';
import { flushDrafts } from '@/components/draft/use-keep-draft';
import { t } from '@/components/words/words';

/** The sheet as a file; what was just typed is sent first, so that it holds it. */
export function SheetLink() {
  return <FileLink file="sheet.pdf" words={t('compare.sheet')} main />;
}

/** What a customer who reads Spanish takes along. */
export function SpanishLinks() {
  const readTwice = useReadTwice();
  return (
    <p className="no-print flex flex-wrap gap-2">
      <FileLink file="sheet.pdf?lang=es" words={t('compare.sheetSpanish')} lang="es" />
      <FileLink file="sheet?lang=es" words={t('compare.pageSpanish')} lang="es" />
      {readTwice ? (
        <FileLink file="before-after.pdf?lang=es" words={t('compare.beforeAfterSpanish')} lang="es" />
      ) : null}
    </p>
  );
}

/** Whether one mode was read more than once, as before and after a repair. */
function useReadTwice(): boolean {
  return useDraftState((s) => {
    const modes = listAt(s.draft, 'runs').map((run) => textAt(run, 'mode'));
    return new Set(modes).size < modes.length;
  });
}

/** Everything else that can be taken along: the sheet as a page, papers and files. */
export function RecordLinks() {
  const readTwice = useReadTwice();
  return (
    <p className="no-print flex flex-wrap gap-2">
      <FileLink file="sheet" words={t('compare.page')} />
      {readTwice ? <FileLink file="before-after.pdf" words={t('compare.beforeAfter')} /> : null}
      <FileLink file="record.pdf" words={t('compare.record')} />
      <FileLink file="cash-flows.csv" words={t('compare.csv')} />
      <FileLink file="appraisal.json" words={t('compare.json')} />
      <FileLink file="visit.json" words={t('visit.export')} />
    </p>
  );
}

function FileLink(props: {
  readonly file: string;
  readonly words: string;
  readonly main?: boolean;
  /** Language of the words, where it is not the page's. */
  readonly lang?: string;
}) {
  const { file } = props;
  const id = useVisitId();
  const [waiting, setWaiting] = useState(false);
  const download = (event: { preventDefault: () => void }) => {
    event.preventDefault();
    setWaiting(true);
    void flushDrafts().finally(() => {
      setWaiting(false);
      window.location.assign(`/visits/${id}/${file}`);
    });
  };
  return (
    <a
      href={`/visits/${id}/${file}`}
      lang={props.lang}
      className={`press ${props.main === true ? 'press-main' : ''}`}
      onClick={download}
    >
      {waiting ? t('compare.sending') : props.words}
    </a>
  );
}
