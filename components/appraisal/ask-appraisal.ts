import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import type { Question, Reply } from './appraise-worker';
import type { View } from './view';

/** Answers drafts one at a time; while one is being answered only the newest further one waits. */
export type Asker = { readonly ask: (version: number, draft: Draft) => void; readonly close: () => void };

/**
 * Starts the engine beside the page. Where the browser has no workers it runs in the page, between two inputs.
 *
 * @param answered called with each answer and the version of the draft it belongs to
 */
export function startAsker(book: FieldBook, answered: (version: number, view: View) => void): Asker {
  let waiting: { version: number; draft: Draft } | undefined;
  let busy = false;
  let run: (question: Question) => void = inPage;
  const worker = startWorker();
  const next = () => {
    if (busy || waiting === undefined) return;
    busy = true;
    const { version, draft } = waiting;
    waiting = undefined;
    run({ version, draft, book });
  };
  const done = (reply: Reply) => {
    busy = false;
    answered(reply.version, reply.view);
    next();
  };
  function inPage(question: Question): void {
    void import('./build-view').then(({ buildView }) =>
      done({ version: question.version, view: buildView(question.draft, book) }),
    );
  }
  if (worker !== undefined) {
    let last: Question | undefined;
    run = (question) => {
      last = question;
      worker.postMessage(question);
    };
    worker.addEventListener('message', (event: MessageEvent<Reply>) => done(event.data));
    worker.addEventListener('error', () => {
      run = inPage;
      if (last !== undefined && busy) inPage(last);
    });
  }
  return {
    ask: (version, draft) => {
      waiting = { version, draft };
      next();
    },
    close: () => worker?.terminate(),
  };
}

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./appraise-worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return undefined;
  }
}
