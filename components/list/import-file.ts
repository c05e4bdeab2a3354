import { t } from '@/components/words/words';

/** What became of a file: a sentence, and one line for each thing to know. */
export type ImportAnswer = {
  readonly ok: boolean;
  readonly title: string;
  readonly lines: readonly string[];
};

/** Sends a file to be taken over; the office checks it whole before it takes anything. */
export async function importFile(file: File): Promise<ImportAnswer> {
  const text = await file.text().catch(() => undefined);
  if (text === undefined || !isJson(text)) return refused([t('files.notJson', { name: file.name })]);
  try {
    const answer = await fetch('/everything.json', {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: text,
    });
    const told = (await answer.json().catch(() => undefined)) as { lines?: unknown } | undefined;
    const lines = Array.isArray(told?.lines) ? told.lines.map(String) : [];
    if (answer.ok) return { ok: true, title: t('files.taken'), lines };
    return refused(lines.length > 0 ? lines : [t('list.notDone')]);
  } catch {
    return refused([t('list.noSignal')]);
  }
}

function refused(lines: readonly string[]): ImportAnswer {
  return { ok: false, title: t('files.refused'), lines };
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
