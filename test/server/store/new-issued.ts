import { createHash } from 'node:crypto';
import type { NewIssuedSheet } from '../../../server/store/issued.ts';

const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

/** A sheet to be written down, with a little of everything that is frozen. */
export function newIssued(
  check: { readonly id: string; readonly jobId: string; readonly number: number },
  revisionNumber: number,
  more: Partial<NewIssuedSheet> = {},
): NewIssuedSheet {
  const revision = String.fromCharCode(64 + revisionNumber);
  const id = `${check.id}-${revision}`;
  const document = `{"id":"${id}","kind":"issued-sheet"}`;
  const pdf = Buffer.from([0x25, 0x50, 0x44, 0x46, 0x2d, 0, 1, 0xff, 0x80, revisionNumber]);
  return {
    id,
    jobId: check.jobId,
    checkId: check.id,
    checkNumber: check.number,
    number: `1-${check.number}`,
    revisionNumber,
    revision,
    title: 'Shelf',
    date: '2026-03-14',
    verdict: 'holds',
    paper: 'letter',
    tool: '1',
    contentDigest: digest(`content ${id}`),
    fingerprint: digest(document),
    document,
    page: `<article>${id} é</article>`,
    pdf,
    pdfDigest: digest(`pdf ${id}`),
    ...more,
  };
}
