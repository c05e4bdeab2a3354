import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import type { Question, Reply } from './appraise-worker';
import type { ChanceView } from './chance-view';
import { STILL_MS } from './still';
import type { View } from './view';

/** Answers drafts one at a time; while one is being answered only the newest further one waits. */
export type Asker = {
  readonly ask: (version: number, draft: Draft) => void;
  /** Fetches the engine before it is needed. */
  readonly warm: () => void;
  readonly close: () => void;
};

/**
 * The engine, fetched when first needed and run beside the page. Where the browser has no workers it runs in the page.
 *
 * @param answered called with each answer and the version of the draft it belongs to
 * @param simulated called with what a simulation of a draft says, once the draft has been still for a moment
 */
export function startAsker(
  book: FieldBook,
  answered: (version: number, view: View) => void,
  simulated?: (version: number, chances: ChanceView | undefined) => void,
): Asker {
  let waiting: { version: number; draft: Draft } | undefined;
  let asked: Question | undefined;
  let engine: Engine | undefined;
  const next = () => {
    if (asked !== undefined || waiting === undefined) return;
    asked = { ...waiting, book };
    waiting = undefined;
    warm();
    engine?.run(asked);
  };
  const done = (reply: Reply) => {
    if ('chances' in reply) {
      simulated?.(reply.version, reply.chances);
      return;
    }
    asked = undefined;
    answered(reply.version, reply.view);
    next();
  };
  const warm = () => {
    engine ??= besidePage(done, () => {
      engine = inPage(done);
      if (asked !== undefined) engine.run(asked);
    });
  };
  return {
    ask: (version, draft) => {
      waiting = { version, draft };
      next();
    },
    warm,
    close: () => engine?.close(),
  };
}

type Engine = { readonly run: (question: Question) => void; readonly close: () => void };

function besidePage(done: (reply: Reply) => void, failed: () => void): Engine {
  try {
    const worker = new Worker(new URL('./appraise-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', (event: MessageEvent<Reply>) => done(event.data));
    worker.addEventListener('error', failed);
    return { run: (question) => worker.postMessage(question), close: () => worker.terminate() };
  } catch {
    return inPage(done);
  }
}

/** The page itself answers; it simulates once the draft has been still, so that typing is never held up. */
function inPage(done: (reply: Reply) => void): Engine {
  let open = true;
  let later: ReturnType<typeof setTimeout> | undefined;
  return {
    run: ({ version, draft, book }) => {
      clearTimeout(later);
      void import('./build-view').then(({ answerDraft }) => {
        if (!open) return;
        const { view, chances } = answerDraft(draft, book);
        done({ version, view });
        clearTimeout(later);
        later = setTimeout(() => done({ version, chances: chances() }), STILL_MS);
      });
    },
    close: () => {
      open = false;
      clearTimeout(later);
    },
  };
}
