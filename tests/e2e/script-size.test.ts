import { gzipSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';

/** Most script a page may need at its first load, compressed [bytes]. Limit: ours. */
const LIMIT = 200_000;

test.for(['/', '/visits/restricted-orifice', '/visits/restricted-orifice/compare'])(
  'wiring: the first load of %s stays under the limit of script',
  async (path) => {
    const html = await (await fetch(`${inject('address')}${path}`)).text();
    const scripts = new Set(
      [...html.matchAll(/<script([^>]*)\ssrc="([^"]+)"([^>]*)>/g)].flatMap(([, before, src, after]) =>
        // What only browsers without modules load is no load of any browser today.
        src === undefined || /nomodule/i.test(`${before} ${after}`) ? [] : [src],
      ),
    );
    expect(scripts.size).toBeGreaterThan(3);
    let total = 0;
    for (const src of scripts) {
      const answer = await fetch(new URL(src, inject('address')));
      expect(answer.status, src).toBe(200);
      total += gzipSync(Buffer.from(await answer.arrayBuffer())).length;
    }
    expect(total, `${path} needs ${total} bytes of script`).toBeLessThan(LIMIT);
  },
);
