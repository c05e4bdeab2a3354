import { type LocalCopy, readLocalCopy, unsentCopies, writeLocalCopy } from './local-copy';
import { sendDraft } from './send-draft';
import { ifClosed } from './visit-lock';

/** What became of a visit kept on this device. */
export type SentState = 'sent' | 'waiting' | 'conflict' | 'refused' | 'open';

/**
 * Sends one kept visit that is not open anywhere on this device. What the office cannot take stays kept, to be
 * settled by the user when the visit is opened.
 */
export async function sendKept(id: string): Promise<SentState> {
  const state = await ifClosed(id, async (): Promise<SentState> => {
    const copy = readLocalCopy(id);
    if (copy?.unsent !== true) return 'sent';
    const answer = await sendDraft(id, copy.baseRevision, copy.draft, false);
    if (answer.kind === 'saved') {
      noteSent(id, copy, answer.revision);
      return 'sent';
    }
    if (answer.kind === 'offline') return 'waiting';
    return answer.kind === 'stale' ? 'conflict' : 'refused';
  });
  return state ?? 'open';
}

/** What was typed while the answer was on its way stays unsent, now made from the new revision. */
function noteSent(id: string, sent: LocalCopy, revision: number): void {
  const now = readLocalCopy(id) ?? sent;
  const unsent = JSON.stringify(now.draft) !== JSON.stringify(sent.draft);
  writeLocalCopy(id, { ...now, baseRevision: revision, unsent });
}

/**
 * Sends every kept visit, one after the other; stops at the first that finds no signal.
 *
 * @returns how each stands
 */
export async function sendAllKept(): Promise<ReadonlyMap<string, SentState>> {
  const states = new Map<string, SentState>();
  for (const { id } of unsentCopies()) {
    const state = await sendKept(id);
    states.set(id, state);
    if (state === 'waiting') break;
  }
  return states;
}
