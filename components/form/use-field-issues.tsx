'use client';

import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import type { Issue } from '@/lib/visit/issue';

type Shown = {
  /** Issues to be shown now. */
  readonly issues: readonly Issue[];
  /** Every issue, shown or waiting. */
  readonly all: readonly Issue[];
  readonly attempted: boolean;
  /** The user asked to go on: missing fields are named from now. */
  readonly attempt: () => void;
  /** The field being typed in keeps quiet until it is left. */
  readonly typingIn: (path: string | undefined) => void;
};

const Holder = createContext<Shown>({
  issues: [],
  all: [],
  attempted: false,
  attempt: () => {},
  typingIn: () => {},
});

/**
 * Decides when an issue is said: what is missing waits until the user asks to go on, except in a choice, which would
 * silently be left out; what cannot be read or lies outside its limits waits until the field is left, so that nothing
 * scolds while one types.
 */
export function FieldIssues(props: { readonly issues: readonly Issue[]; readonly children: ReactNode }) {
  const [attempted, setAttempted] = useState(false);
  const [typing, setTyping] = useState<string | undefined>(undefined);
  const shown = useMemo<Shown>(() => {
    const issues = props.issues.filter(
      (issue) =>
        issue.path !== typing && (attempted || issue.code !== 'missing' || issue.path.startsWith('choices.')),
    );
    return {
      issues,
      all: props.issues,
      attempted,
      attempt: () => setAttempted(true),
      typingIn: setTyping,
    };
  }, [props.issues, attempted, typing]);
  return <Holder.Provider value={shown}>{props.children}</Holder.Provider>;
}

export function useIssues(): Shown {
  return useContext(Holder);
}

/** The issue shown beside one field, if any. */
export function useIssueAt(path: string): Issue | undefined {
  return useContext(Holder).issues.find((issue) => issue.path === path);
}
