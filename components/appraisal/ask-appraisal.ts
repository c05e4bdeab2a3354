import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import type { Simulation } from '@/lib/finance/simulate';
import type { Answer, Question, Reply } from './appraise-worker';
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
 * @param simulated called with the simulation of a draft that has been still for a moment; in the page there is none
 */
export function startAsker(
  book: FieldBook,
  answered: (version: number, view: View) => void,
  simulated?: (version: number, simulation: Simulation) => void,
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
    if ('simulation' in reply) {
      simulated?.(reply.version, reply.simulation);
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

function inPage(done: (reply: Answer) => void): Engine {
  let open = true;
  return {
    run: (question) => {
      void import('./build-view').then(({ buildView }) => {
        if (open) done({ version: question.version, view: buildView(question.draft, question.book) });
      });
    },
    close: () => {
      open = false;
    },
  };
}
