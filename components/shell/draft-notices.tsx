import { ConflictNotice } from './conflict-notice';
import { RefusalNotice } from './refusal-notice';

/** What stands between this device's draft and the office's. */
export function DraftNotices() {
  return (
    <>
      <ConflictNotice />
      <RefusalNotice />
    </>
  );
}
