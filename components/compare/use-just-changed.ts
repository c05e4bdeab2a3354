'use client';

import { useEffect, useRef, useState } from 'react';

const MARKED_MS = 4_000;

/** True for a few seconds after a text on the screen has changed; never for its first value. */
export function useJustChanged(text: string): boolean {
  const [changed, setChanged] = useState(false);
  const before = useRef(text);
  useEffect(() => {
    if (before.current === text) return;
    before.current = text;
    setChanged(true);
    const timer = setTimeout(() => setChanged(false), MARKED_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return changed;
}
