import type { IssuedSheet } from '../../store/issued.ts';
import { outcomeWords } from '../verdict.ts';
import type { StandingView } from '../jobs/standing-view.ts';

/** An issued sheet as a line of a list. */
interface IssuedRow extends StandingView {
  readonly address: string;
  readonly pdfAddress: string;
  readonly label: string;
  readonly title: string;
  readonly date: string;
  readonly isSuperseded: boolean;
  readonly superseded: string;
}

/** Where an issued sheet is, for people of its office. */
export function issuedAddress({ id }: Pick<IssuedSheet, 'id'>): string {
  return `/issued/${id}`;
}

/** A list of issued sheets. */
export interface IssuedList {
  readonly caption: string;
  readonly sheets: readonly IssuedRow[];
}

/**
 * A list of issued sheets; none where there are no sheets.
 *
 * @param addressOf where each of them is
 */
export function issuedList(
  caption: string,
  sheets: readonly IssuedSheet[],
  addressOf: (sheet: IssuedSheet) => string = issuedAddress,
): IssuedList[] {
  if (sheets.length === 0) return [];
  const rows = sheets.map((sheet) => ({
    ...outcomeWords(sheet.verdict),
    governs: '',
    address: addressOf(sheet),
    pdfAddress: `${addressOf(sheet)}/sheet.pdf`,
    label: sheetLabel(sheet),
    title: sheet.title,
    date: sheet.date,
    isSuperseded: sheet.isSuperseded,
    superseded: supersededWords(sheet),
  }));
  return [{ caption, sheets: rows }];
}

/** `14-3 revision A` */
export function sheetLabel({ number, revision }: Pick<IssuedSheet, 'number' | 'revision'>): string {
  return `${number} revision ${revision}`;
}

/** By what a sheet is superseded; empty where it is not. */
export function supersededWords({
  isSuperseded,
  newestRevision,
}: Pick<IssuedSheet, 'isSuperseded' | 'newestRevision'>): string {
  return isSuperseded ? `Superseded by revision ${newestRevision}` : '';
}
