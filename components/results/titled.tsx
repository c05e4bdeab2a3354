import { type ReactNode, useId } from 'react';

/** A titled section; its title is its name for screen readers. */
export function Titled(props: {
  readonly title: string;
  readonly level?: 2 | 3;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  const id = useId();
  const Heading = props.level === 2 ? 'h2' : 'h3';
  return (
    <section aria-labelledby={id} className={props.className}>
      <Heading id={id} className={props.level === 2 ? 'text-2xl' : 'text-lg'}>
        {props.title}
      </Heading>
      {props.children}
    </section>
  );
}
