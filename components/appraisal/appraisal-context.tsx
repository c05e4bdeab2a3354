'use client';

import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { useDraftStore, useFieldBook } from '@/components/draft/draft-context';
import { FieldIssues } from '@/components/form/use-field-issues';
import { type Asker, startAsker } from './ask-appraisal';
import type { ChanceView } from './chance-view';
import type { AnswerView, View } from './view';

type Held = {
  readonly view: View;
  /** The last answer, kept in sight while the newest draft has none. */
  readonly answer: AnswerView | undefined;
  /** True while the newest change is not answered yet. */
  readonly working: boolean;
  /** What the newest simulation says; it comes a moment after its answer and stands until the next one. */
  readonly simulated: { readonly chances: ChanceView | undefined; readonly stale: boolean } | undefined;
  /** Asks for a simulation of the draft as it stands, where none has been made yet. */
  readonly simulate: () => void;
};

const Holder = createContext<Held>({
  view: { issues: [] },
  answer: undefined,
  working: true,
  simulated: undefined,
  simulate: () => {},
});

const NOTHING_YET: View = { issues: [] };

/** The engine is fetched once the page has been still for a while, or at the first touch. */
const WARM_MS = 4_000;

/** Answers every change of the draft, beside the page, and holds the newest answer for the screens below. */
export function AppraisalHolder(props: {
  /** The answer to the draft as it was opened; left out where only this device can work it out. */
  readonly first?: View;
  readonly children: ReactNode;
}) {
  const isAnswered = props.first !== undefined;
  const store = useDraftStore();
  const book = useFieldBook();
  const [answered, setAnswered] = useState<{ version: number; view: View }>({
    version: 0,
    view: props.first ?? NOTHING_YET,
  });
  const [asked, setAsked] = useState(0);
  const [simulated, setSimulated] = useState<{ version: number; chances: ChanceView | undefined }>();
  const simulation = useRef({ isWanted: false, start: () => {} });
  useEffect(() => {
    const asker: Asker = startAsker(
      book,
      (version, view) => setAnswered({ version, view }),
      (version, chances) => setSimulated({ version, chances }),
    );
    let isAsked = false;
    let seen = -1;
    const look = () => {
      const { version, draft } = store.get();
      if (version === seen) return;
      seen = version;
      setAsked(version);
      isAsked = true;
      asker.ask(version, draft);
    };
    simulation.current.start = () => {
      if (isAsked) return;
      isAsked = true;
      asker.ask(store.get().version, store.get().draft);
    };
    if (store.get().version > 0 || !isAnswered) look();
    else seen = 0;
    if (simulation.current.isWanted) simulation.current.start();
    const stop = store.subscribe(look);
    const calm = setTimeout(asker.warm, WARM_MS);
    window.addEventListener('pointerdown', asker.warm, { once: true });
    window.addEventListener('focusin', asker.warm, { once: true });
    return () => {
      stop();
      clearTimeout(calm);
      window.removeEventListener('pointerdown', asker.warm);
      window.removeEventListener('focusin', asker.warm);
      asker.close();
    };
  }, [store, book, isAnswered]);
  // A screen below may ask before the engine above it stands: effects run from the inside out.
  const simulate = useCallback(() => {
    simulation.current.isWanted = true;
    simulation.current.start();
  }, []);
  const held = useMemo<Held>(
    () => ({
      view: answered.view,
      answer: answered.view.answer,
      working: answered.version < asked,
      simulated:
        simulated === undefined
          ? undefined
          : { chances: simulated.chances, stale: simulated.version < Math.max(asked, answered.version) },
      simulate,
    }),
    [answered, asked, simulated, simulate],
  );
  return (
    <Holder.Provider value={held}>
      <FieldIssues issues={answered.view.issues}>{props.children}</FieldIssues>
    </Holder.Provider>
  );
}

export function useAppraisal(): Held {
  return useContext(Holder);
}
