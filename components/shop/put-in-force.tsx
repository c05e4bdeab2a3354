'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { localDate } from '@/components/draft/blank-visit';
import { dateWords } from '@/components/format/time-words';
import { t } from '@/components/words/shop-words';
import type { ShopChange } from '@/lib/visit/shop-change';
import { type Mark, markErrors } from './check-entry';
import { TextBox } from './entry-box';
import { saveChange } from './save-change';

type Props = {
  /** Unique on the page. */
  readonly id: string;
  /** Revision of the part of the shop that the change is made from. */
  readonly revision: number;
  readonly button: string;
  /** What is put in force; `undefined` when an entry above cannot be used, which is said beside it. */
  readonly make: (mark: Mark) => ShopChange | undefined;
  readonly onSaved?: () => void;
};

const WHO = 'keepworth-shop-who';

/** From when, by whom and why: every change is a new version with its reason, nothing is overwritten. */
export function PutInForce(props: Props) {
  const router = useRouter();
  const [mark, setMark] = useState<Mark>({ fromDate: '', setBy: '', why: '' });
  const [tried, setTried] = useState(false);
  const [told, setTold] = useState<{ readonly ok: boolean; readonly words: string } | undefined>(undefined);
  const busy = useRef(false);
  useEffect(() => setMark((now) => ({ ...now, fromDate: localDate(new Date()), setBy: lastName() })), []);
  const errors = tried ? markErrors(mark) : {};
  const type = (key: keyof Mark) => (typed: string) => {
    setTold(undefined);
    setMark((now) => ({ ...now, [key]: typed }));
  };
  const save = async () => {
    setTried(true);
    const whole = { fromDate: mark.fromDate, setBy: mark.setBy.trim(), why: mark.why.trim() };
    const change = props.make(whole);
    if (change === undefined || Object.keys(markErrors(mark)).length > 0) {
      setTold({ ok: false, words: t('shop.lookAbove') });
      return;
    }
    if (busy.current) return;
    busy.current = true;
    const done = await saveChange(props.revision, change);
    busy.current = false;
    if (!done.ok) {
      setTold(done);
      return;
    }
    keepName(whole.setBy);
    setTried(false);
    setMark((now) => ({ ...now, why: '' }));
    setTold({ ok: true, words: t('shop.saved', { date: dateWords(whole.fromDate) }) });
    props.onSaved?.();
    router.refresh();
  };
  const box = (key: keyof Mark, label: string, longest: number, date = false) => (
    <TextBox
      id={`${props.id}-${key}`}
      label={label}
      longest={longest}
      date={date}
      value={mark[key]}
      error={errors[key]}
      onType={type(key)}
    />
  );
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className="grid gap-x-4 sm:grid-cols-[auto_1fr]">
        {box('fromDate', t('shop.fromDate'), 10, true)}
        {box('setBy', t('shop.setBy'), 80)}
      </div>
      {box('why', t('shop.why'), 400)}
      <button type="submit" className="press press-main mt-2">
        {props.button}
      </button>
      <p
        role="status"
        className={`mt-2 ${told?.ok === false ? 'font-semibold text-danger' : 'font-semibold'}`}
      >
        {told?.words}
      </p>
    </form>
  );
}

function lastName(): string {
  try {
    return window.localStorage.getItem(WHO) ?? '';
  } catch {
    return '';
  }
}

function keepName(name: string): void {
  try {
    window.localStorage.setItem(WHO, name);
  } catch {
    // A browser that may not store asks for the name again.
  }
}
