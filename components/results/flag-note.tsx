import type { FlagView } from '@/components/appraisal/view';
import { t } from '@/components/words/words';

const LOOK = {
  danger: 'note-danger',
  conflict: 'note-doubt',
  doubt: 'note-doubt',
  unknown: 'note-plain',
} as const;

/** A danger, a conflict, a doubt or something not known; the kind is told by a word, not by colour. */
export function FlagNote(props: { readonly flag: FlagView }) {
  const { severity, words } = props.flag;
  return (
    <p className={LOOK[severity]}>
      <strong className={severity === 'danger' ? 'text-danger' : ''}>{t(`flag.${severity}`)}</strong> {words}
    </p>
  );
}
