import type { Checked } from '../check/answer-to.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import { printedFingerprint } from '../sheets/fingerprint.ts';

const usualTitles: Readonly<Record<Checked['element'], string>> = {
  'bracket-shelf': 'Shelf on brackets',
  'wall-fixing': 'Fixing on a wall',
  'counter-overhang': 'Counter overhang',
  'counter-run': 'Counter run',
};

/** What a sheet is called where its check has no title. */
export function titleOf({ document, element }: Checked): string {
  return document.title ?? usualTitles[element];
}

/** One line of the sheet's head. */
export interface SheetField {
  readonly name: string;
  readonly value: string;
  /** Whether it takes the whole width on paper, and whether it does everywhere. */
  readonly isWide: boolean;
  readonly isLong: boolean;
}

/** What makes a sheet more than the check on it: its number, its job, and the mark at its foot. */
export interface SheetHead {
  readonly fingerprint: string;
  readonly numbers: readonly SheetField[];
  readonly job: readonly SheetField[];
  readonly foot: readonly string[];
}

const aid = 'Shelf and overhang check: a calculation aid';

/** The head of a sheet that is not issued. */
export function plainHead(fingerprint: string): SheetHead {
  return { fingerprint, numbers: [], job: [], foot: [`Fingerprint ${fingerprint} · ${aid}`] };
}

/** What is known of an issued sheet besides the check on it. */
interface IssuedWords {
  readonly number: string;
  readonly revision: string;
  readonly fingerprint: string;
  readonly job: Readonly<
    Record<'name' | 'client' | 'address' | 'reference' | 'edition' | 'authority', string>
  > & { readonly number: number };
}

/** The head of an issued sheet. */
export function issuedHead({ number, revision, fingerprint, job }: IssuedWords): SheetHead {
  const words: readonly (readonly [string, readonly string[]])[] = [
    ['Job', [`${job.number}`, job.name]],
    ['Client and address', [job.client, job.address]],
    ['Adopted code and authority', [job.edition, job.authority]],
  ];
  const said = words.map(([name, parts]) => wide(name, parts.filter((part) => part !== '').join(' · ')));
  return {
    fingerprint: printedFingerprint(fingerprint),
    numbers: [narrow('Sheet', number), narrow('Revision', revision)],
    job: [narrow('Reference', job.reference), ...said],
    foot: issuedFoot({ number, revision, fingerprint }),
  };
}

/** What stands at the foot of every page of an issued sheet. */
export function issuedFoot({
  number,
  revision,
  fingerprint,
}: Pick<IssuedWords, 'number' | 'revision' | 'fingerprint'>): string[] {
  return [
    `Job ${number.split('-')[0] ?? ''} · Sheet ${number} · Revision ${revision} · ${aid}`,
    `Fingerprint ${printedFingerprint(fingerprint)}`,
  ];
}

/** The lines of the head, in the order in which they are printed. */
export function sheetFields(
  { date = '', preparedBy = '', checkedBy = '' }: { date?: string; preparedBy?: string; checkedBy?: string },
  { code, tool }: CheckResult['edition'],
  { numbers, job, fingerprint }: SheetHead,
): SheetField[] {
  return [
    ...numbers,
    narrow('Date', date),
    narrow('Prepared by', preparedBy),
    narrow('Checked by', checkedBy),
    ...job,
    wide('Code', code),
    wide('Tool and data', tool),
    wide('Fingerprint', fingerprint),
  ];
}

/** The stylesheet that prints title, mark and foot on the pages of a browser's print. */
export function headAddress(title: string, mark: string, foot: readonly string[] = []): string {
  const query = new URLSearchParams([
    ['title', title],
    ['mark', mark],
    ...foot.map((line): [string, string] => ['foot', line]),
  ]);
  return `/sheet-head.css?${query.toString()}`;
}

/** What still stands well in a third of the head. */
const longest = 70;

function narrow(name: string, value: string): SheetField {
  return { name, value, isWide: false, isLong: false };
}

function wide(name: string, value: string): SheetField {
  return { name, value, isWide: true, isLong: value.length > longest };
}
