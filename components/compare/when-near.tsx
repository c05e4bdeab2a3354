'use client';

import { type ReactNode, useEffect, useRef, useState } from 'react';

const AHEAD = '600px 0px';

/** Draws its content once the reader comes near it, or prints; what is far costs nothing. */
export function WhenNear(props: { readonly children: ReactNode }) {
  const box = useRef<HTMLDivElement>(null);
  const [near, setNear] = useState(false);
  useEffect(() => {
    if (near || box.current === null) return;
    const show = () => setNear(true);
    const watch = new IntersectionObserver((seen) => seen.some((one) => one.isIntersecting) && show(), {
      rootMargin: AHEAD,
    });
    watch.observe(box.current);
    window.addEventListener('beforeprint', show);
    return () => {
      watch.disconnect();
      window.removeEventListener('beforeprint', show);
    };
  }, [near]);
  return (
    <div ref={box} className={near ? 'min-w-0' : 'min-h-[32rem]'}>
      {near ? props.children : null}
    </div>
  );
}
