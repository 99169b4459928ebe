import type { LookUp } from '../../issued/look-up.ts';
import type { IssuedSheet } from '../../store/issued.ts';
import { caution } from '../../../shared/cautions.ts';
import { pageFrame, type PageFrame } from '../page.ts';
import { outcomeWords, type OutcomeWords } from '../verdict.ts';
import { supersededWords } from './issued-rows.ts';

/** The sheet that was found, in as much as anybody may learn of it. */
interface FoundSheet extends OutcomeWords {
  readonly governs: string;
  readonly number: string;
  readonly revision: string;
  readonly date: string;
}

interface FoundView {
  readonly heading: string;
  readonly said: string;
  /** Whether what was given is not to be relied on. */
  readonly isAlarming: boolean;
  /** One, or none. */
  readonly sheets: readonly FoundSheet[];
}

export interface FingerprintPage extends PageFrame {
  readonly typed: string;
  readonly error: string;
  readonly hasError: boolean;
  readonly found: readonly FoundView[];
  readonly caution: string;
}

/**
 * The page where a fingerprint is looked up.
 *
 * @param asked what was typed in, what is wrong with it, and what came of it; undefined before anything was asked
 */
export function fingerprintPage(asked: {
  readonly typed: string;
  readonly error: string;
  readonly found: LookUp | undefined;
}): FingerprintPage {
  return {
    ...pageFrame('Look up a fingerprint'),
    typed: asked.typed,
    error: asked.error,
    hasError: asked.error !== '',
    found: asked.found === undefined ? [] : [foundView(asked.found)],
    caution: caution.aid,
  };
}

function foundView(found: LookUp): FoundView {
  switch (found.kind) {
    case 'issued':
      return issuedView(found.sheet);
    case 'changed':
      return {
        heading: 'It is not what was issued',
        said: changedWords[found.what],
        isAlarming: true,
        sheets: [foundSheet(found.sheet)],
      };
    case 'unknown':
      return {
        heading: 'It is not known here',
        said: unknownWords[found.what],
        isAlarming: true,
        sheets: [],
      };
    case 'unreadable':
      return {
        heading: 'There is nothing in it to look up',
        said: found.message,
        isAlarming: true,
        sheets: [],
      };
  }
}

function issuedView(sheet: IssuedSheet): FoundView {
  const heading = sheet.isSuperseded ? 'It was issued, and is superseded' : 'It was issued';
  const said = sheet.isSuperseded
    ? `This is a sheet that was issued here. ${supersededWords(sheet)}: ask for that one.`
    : 'This is a sheet that was issued here, and nothing supersedes it.';
  return { heading, said, isAlarming: sheet.isSuperseded, sheets: [foundSheet(sheet)] };
}

const changedWords = {
  document:
    'The document says that it is the sheet below, and its content is not what was issued: it was changed, or written anew by another program. Ask for the document as it was issued.',
  pdf: 'The file says that it is the sheet below, and its bytes are not those that were issued: it was changed, or saved anew by another program. Ask for the file as it was issued.',
} as const;

const unknownWords = {
  fingerprint:
    'No sheet with this fingerprint was issued here. A digit may be mistyped; or the sheet was issued elsewhere, by another copy of this program.',
  document: 'No sheet with this content was issued here. It may have been issued elsewhere, or changed.',
  pdf: 'No sheet was issued here with these bytes. It may have been issued elsewhere, or never; or the file was changed or saved anew by another program: then type in the fingerprint from its foot, and compare what it says line by line.',
} as const;

function foundSheet({ number, revision, date, verdict }: IssuedSheet): FoundSheet {
  return { ...outcomeWords(verdict), governs: '', number, revision, date };
}
