import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { plainSha256, sha256 } from '../../src/commands/ports/sha256.ts';

it('the sha256 of ours, in whatever pieces, is that of node', () => {
  fc.assert(
    fc.property(fc.array(fc.uint8Array({ maxLength: 200 }), { maxLength: 6 }), pieces => {
      const [ours, chosen] = [plainSha256(), sha256()];
      const theirs = createHash('sha256');
      for (const piece of pieces) {
        ours.update(piece);
        chosen.update(piece);
        theirs.update(piece);
      }
      const wanted = theirs.digest('hex');
      expect([ours.digest(), chosen.digest()]).toEqual([wanted, wanted]);
    }),
  );
});
