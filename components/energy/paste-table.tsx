'use client';

import { useId, useState } from 'react';
import { t } from '@/components/words/words';

/** What became of a pasted table: one sentence, what could not be read, and what else could be done with it. */
export type TableRead = {
  readonly done: string;
  readonly notes: readonly string[];
  readonly offer?: { readonly words: string; readonly take: () => TableRead };
};

/** A box for a table pasted from a spreadsheet, or a file of one; what cannot be read stays and is explained. */
export function PasteTable(props: {
  readonly label: string;
  readonly hint: string;
  readonly example: string;
  readonly start?: string;
  readonly read: (text: string) => Promise<TableRead>;
}) {
  const id = useId();
  const [text, setText] = useState(props.start ?? '');
  const [result, setResult] = useState<TableRead | undefined>(undefined);
  const show = (read: TableRead) => {
    setResult(read);
    if (read.notes.length === 0 && read.offer === undefined && props.start === undefined) setText('');
  };
  const take = async (table: string) => show(await props.read(table));
  const offer = result?.offer;
  return (
    <div className="py-2">
      <label htmlFor={id} className="block font-medium">
        {props.label}
      </label>
      <p id={`${id}-hint`} className="text-soft">
        {props.hint}
      </p>
      <p id={`${id}-example`} className="font-mono whitespace-pre-line text-soft">
        {props.example}
      </p>
      <textarea
        id={id}
        className="box mt-1 w-full font-mono"
        rows={4}
        value={text}
        aria-describedby={`${id}-hint ${id}-example`}
        onChange={(event) => setText(event.target.value)}
      />
      <div className="mt-2 flex flex-wrap gap-2">
        <button type="button" className="press" onClick={() => void take(text)}>
          {t('paste.take')}
        </button>
        <label className="press cursor-pointer has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-plum">
          <input
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            className="sr-only"
            onChange={async (event) => {
              const file = event.target.files?.[0];
              if (file === undefined) return;
              const content = await file.text();
              event.target.value = '';
              setText(content);
              await take(content);
            }}
          />
          {t('paste.file')}
        </label>
      </div>
      <div role="status">
        {result === undefined ? null : (
          <div
            className={`mt-2 ${result.notes.length === 0 && offer === undefined ? 'note-plain' : 'note-doubt'}`}
          >
            {result.done === '' ? null : <p className="font-semibold">{result.done}</p>}
            <ul>
              {result.notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
            {offer === undefined ? null : (
              <button type="button" className="press mt-2" onClick={() => show(offer.take())}>
                {offer.words}
              </button>
            )}
          </div>
        )}
      </div>
    </div>
  );
}
