import { version } from '../../calc/version.ts';
import { cautions } from '../../shared/cautions.ts';
import type { Paper } from '../sheets/paper.ts';
import type { Printable } from '../sheets/pdf/printable.ts';
import type { Job } from '../store/jobs.ts';
import type { JobWords, StandingWord } from '../store/tables.ts';
import type { Draft } from './draft.ts';

/** What the cover says besides the checks. */
export interface JobPaper {
  readonly job: JobWords & Pick<Job, 'number'>;
  readonly paper: Paper;
  /** The day and time of making, in words. */
  readonly made: string;
  /** Whether the notes are printed: they are for the office alone. */
  readonly hasNotes: boolean;
}

const aid = `Shelf and overhang check ${version}: a calculation aid`;

/**
 * A whole job as the data of its paper: cover and pages of every check. The checks' own pages are JSON already.
 *
 * @param printable fits text to the font
 */
export function jobPaper(
  { job, paper, made, hasNotes }: JobPaper,
  drafts: readonly Draft[],
  { words }: Printable,
): string {
  const label = `Job ${job.number}`;
  const lines =
    hasNotes && job.notes !== '' ? job.notes.split('\n').filter((line) => line.trim() !== '') : [];
  const said = new Set(drafts.flatMap((draft) => draft.cautions));
  const cover = {
    isA4: paper === 'a4',
    kind: 'Calculations of a whole job',
    label,
    title: words(job.name),
    authors: job.preparedBy === '' ? [] : [words(job.preparedBy)],
    made: `Made ${made}`,
    foot: [`Not issued: a working copy of ${label}, made ${made}`],
    markLine: aid,
    fields: [
      ['Job', String(job.number), false],
      ['Reference', words(job.reference), false],
      ['Made', made, false],
      ['Client', words(job.client), true],
      ['Address', words(job.address), true],
      ['Code adopted there', words(job.edition), true],
      ['Authority', words(job.authority), true],
      ['Tool', aid, true],
    ],
    standing: standingWords(drafts),
    standingNotes: [
      'Not issued. This is a working copy: what is issued is a sheet with a number of its own.',
    ],
    signatures: [
      ['Prepared by', words(job.preparedBy)],
      ['Checked by', words(job.checkedBy)],
    ],
    rows: drafts.map(({ row }) => row),
    notes: lines.map(words),
    cautions: said.size === 0 ? cautions.map(words) : [...said],
  };
  // The checks' pages are put in as they are: to read and write them once more would hold everybody up.
  return `${JSON.stringify(cover).slice(0, -1)},"checks":[${drafts.map(({ json }) => json).join(',')}]}`;
}

const counted: Readonly<Record<StandingWord, readonly [one: string, many: string]>> = {
  'does-not-hold': ['does not hold', 'do not hold'],
  unfinished: ['is unfinished', 'are unfinished'],
  'cannot-say': ['can’t be said', 'can’t be said'],
  holds: ['holds', 'hold'],
};

/** "Of 20 checks 1 does not hold, 2 are unfinished, 17 hold.", the worst first. */
function standingWords(drafts: readonly Draft[]): string {
  if (drafts.length === 0) return 'There are no checks in this job yet.';
  const parts = Object.entries(counted).flatMap(([standing, [one, many]]) => {
    const count = drafts.filter((draft) => draft.standing === standing).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  return `Of ${drafts.length} ${drafts.length === 1 ? 'check' : 'checks'} ${parts.join(', ')}.`;
}
