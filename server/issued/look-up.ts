import { z } from 'zod';
import { readJson } from '../../shared/check-document/index.ts';
import { digestOf } from '../sheets/fingerprint.ts';
import { findIssued, type IssuedSheet } from '../store/issued.ts';
import type { Store } from '../store/open-store.ts';
import { compactJson } from './compact-json.ts';
import { issuedKind } from './frozen-document.ts';

/** What a fingerprint or a file turned out to be. */
export type LookUp =
  /** It is the issued one, superseded or not. */
  | { readonly kind: 'issued'; readonly sheet: IssuedSheet }
  /** It says that it is this sheet, and is not what was issued. */
  | { readonly kind: 'changed'; readonly sheet: IssuedSheet; readonly what: 'document' | 'pdf' }
  | { readonly kind: 'unknown'; readonly what: 'fingerprint' | 'document' | 'pdf' }
  /** Nothing that could be looked up. */
  | { readonly kind: 'unreadable'; readonly message: string };

/** Looks a whole fingerprint up. */
export async function lookUpFingerprint(store: Store, fingerprint: string): Promise<LookUp> {
  const sheet = await findIssued(store, 'fingerprint', fingerprint);
  return sheet === undefined ? { kind: 'unknown', what: 'fingerprint' } : { kind: 'issued', sheet };
}

/** Looks an untrusted file up: the document of a sheet, or its PDF. */
export async function lookUpFile(store: Store, bytes: Uint8Array): Promise<LookUp> {
  if (bytes.length === 0) return { kind: 'unreadable', message: 'No file was chosen, or it is empty.' };
  return startsAsPdf(bytes) ? lookUpPdf(store, bytes) : lookUpDocument(store, bytes);
}

async function lookUpPdf(store: Store, bytes: Uint8Array): Promise<LookUp> {
  const issued = await findIssued(store, 'pdfDigest', digestOf(bytes));
  if (issued !== undefined) return { kind: 'issued', sheet: issued };
  const named = printed.exec(Buffer.from(bytes).toString('latin1'))?.[1]?.replace(/\s/g, '');
  const sheet = named === undefined ? undefined : await findIssued(store, 'fingerprint', named);
  return sheet === undefined ? { kind: 'unknown', what: 'pdf' } : { kind: 'changed', sheet, what: 'pdf' };
}

/** As the file's own description names it. */
const printed = /Fingerprint ((?:[0-9a-f]{4} ){15}[0-9a-f]{4})/;

function startsAsPdf(bytes: Uint8Array): boolean {
  return Buffer.from(bytes.subarray(0, 5)).toString('latin1') === '%PDF-';
}

const named = z.looseObject({ kind: z.literal(issuedKind), id: z.unknown() });
const idShape = /^[0-9a-f]{24}$/;

/**
 * The file is the frozen document if every character of it is, but for its layout. That is more than comparing values: a
 * number that is spelled otherwise, or a field that stands there twice, would read the same to a program and not to people.
 */
async function lookUpDocument(store: Store, bytes: Uint8Array): Promise<LookUp> {
  const json = readJson(bytes);
  if (!json.ok)
    return { kind: 'unreadable', message: `The file is no PDF, and no document: ${json.message}` };
  const fingerprint = digestOf(compactJson(new TextDecoder().decode(bytes)));
  const issued = await findIssued(store, 'fingerprint', fingerprint);
  if (issued !== undefined) return { kind: 'issued', sheet: issued };
  const says = named.safeParse(json.value);
  if (!says.success) return { kind: 'unreadable', message: noSheet };
  const { id } = says.data;
  const sheet = typeof id === 'string' && idShape.test(id) ? await findIssued(store, 'id', id) : undefined;
  return sheet === undefined
    ? { kind: 'unknown', what: 'document' }
    : { kind: 'changed', sheet, what: 'document' };
}

const noSheet =
  'The file is JSON, and not the document of an issued sheet: those say "kind": "issued-sheet". A check or a job kept as a file is no issued sheet.';
