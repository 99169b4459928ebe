import { newId } from '../store/ids.ts';
import type { Progress } from './make-job-paper.ts';
import { WorkError } from './make-job-paper.ts';

/** How a work stands. */
export type WorkState =
  | { readonly is: 'going'; readonly progress: Progress }
  | { readonly is: 'ready'; readonly pdf: Uint8Array }
  | { readonly is: 'cancelled' }
  | { readonly is: 'failed'; readonly error: WorkError };

/** For whom a work is made: the people of an office, or whoever has a link. Nobody else sees it. */
export interface Audience {
  readonly officeId: string;
  readonly jobId: string;
  /** The link it was asked for by; empty for the office's own people. */
  readonly linkId: string;
}

/** A PDF that is being made or was made. */
export interface Work {
  readonly id: string;
  readonly audience: Audience;
  /** What it is made of: `letter` or `a4`. */
  readonly paper: string;
  /** How many checks there are. */
  readonly checks: number;
  /** The name of its file. */
  readonly fileName: string;
  readonly state: WorkState;
}

/** What a work does: it tells how far it is, and ends where the signal says so. */
export type Doing = (tell: (progress: Progress) => void, signal: AbortSignal) => Promise<Uint8Array>;

export interface Works {
  /**
   * Begins a work, or gives the one that goes on for the same people with the same job and paper.
   *
   * @returns undefined where too many go on already
   */
  begin(about: Omit<Work, 'id' | 'state'>, doing: Doing): Work | undefined;
  /** A work of these people; undefined: there is none, or none any more. */
  find(audience: Audience, id: string): Work | undefined;
  /** Ends a work of these people that goes on. */
  cancel(audience: Audience, id: string): void;
  /** Ends every work. */
  close(): void;
}

export interface WorksRules {
  readonly mostGoing: number;
  readonly mostGoingOfOffice: number;
  /** Of all the links of an office together, so that they leave room for its own people. */
  readonly mostGoingOfLinks: number;
  /** How long one is kept when it is over. */
  readonly kept_ms: number;
  readonly mostKeptOfOffice: number;
  readonly mostKeptBytes: number;
}

const usual: WorksRules = {
  mostGoing: 12,
  mostGoingOfOffice: 4,
  mostGoingOfLinks: 2,
  kept_ms: 30 * 60_000,
  mostKeptOfOffice: 10,
  mostKeptBytes: 200_000_000,
};

interface Kept {
  work: Work;
  readonly ending: AbortController;
  /** When it was over, by the clock; undefined: it goes on. */
  over_ms: number | undefined;
}

/** Keeps works in memory, so many for so long; when the program ends they are gone. */
export function createWorks(report: (error: unknown) => void, rules = usual, now_ms = Date.now): Works {
  const all = new Map<string, Kept>();
  const going = (): Kept[] => [...all.values()].filter(({ over_ms }) => over_ms === undefined);

  const tidy = (): void => {
    const over = [...all.values()]
      .filter(({ over_ms }) => over_ms !== undefined)
      .toSorted((a, b) => (b.over_ms ?? 0) - (a.over_ms ?? 0));
    let bytes = 0;
    const ofOffice = new Map<string, number>();
    for (const { work, over_ms = 0 } of over) {
      const office = work.audience.officeId;
      const count = (ofOffice.get(office) ?? 0) + 1;
      ofOffice.set(office, count);
      bytes += work.state.is === 'ready' ? work.state.pdf.length : 0;
      const isOld = now_ms() - over_ms > rules.kept_ms;
      if (isOld || count > rules.mostKeptOfOffice || bytes > rules.mostKeptBytes) all.delete(work.id);
    }
  };

  const hasRoom = ({ officeId, linkId }: Audience): boolean => {
    const now = going();
    const office = now.filter(({ work }) => work.audience.officeId === officeId);
    const links = office.filter(({ work }) => work.audience.linkId !== '');
    return (
      now.length < rules.mostGoing &&
      office.length < rules.mostGoingOfOffice &&
      (linkId === '' || links.length < rules.mostGoingOfLinks)
    );
  };

  const settle = (kept: Kept, state: WorkState): void => {
    if (kept.over_ms !== undefined) return;
    kept.work = { ...kept.work, state };
    kept.over_ms = now_ms();
    tidy();
  };

  const find = (audience: Audience, id: string): Kept | undefined => {
    tidy();
    const kept = all.get(id);
    return kept !== undefined && isSame(kept.work.audience, audience) ? kept : undefined;
  };

  return {
    begin(about, doing) {
      const same = going().find(
        ({ work }) => isSame(work.audience, about.audience) && work.paper === about.paper,
      );
      if (same !== undefined) return same.work;
      if (!hasRoom(about.audience)) return undefined;
      const state: WorkState = { is: 'going', progress: { at: 'checks', done: 0 } };
      const kept: Kept = {
        work: { ...about, id: newId(), state },
        ending: new AbortController(),
        over_ms: undefined,
      };
      all.set(kept.work.id, kept);
      const tell = (progress: Progress): void => {
        if (kept.over_ms === undefined) kept.work = { ...kept.work, state: { is: 'going', progress } };
      };
      doing(tell, kept.ending.signal).then(
        (pdf) => settle(kept, { is: 'ready', pdf }),
        (cause: unknown) => {
          const error = cause instanceof WorkError ? cause : new WorkError('not-set', '', cause);
          if (kept.over_ms === undefined && error.fault !== 'busy' && error.fault !== 'too-slow')
            report(error);
          settle(kept, { is: 'failed', error });
        },
      );
      return kept.work;
    },
    find: (audience, id) => find(audience, id)?.work,
    cancel(audience, id) {
      const kept = find(audience, id);
      if (kept === undefined) return;
      settle(kept, { is: 'cancelled' });
      kept.ending.abort();
    },
    close() {
      for (const kept of going()) {
        settle(kept, { is: 'cancelled' });
        kept.ending.abort();
      }
    },
  };
}

function isSame(one: Audience, other: Audience): boolean {
  return one.officeId === other.officeId && one.jobId === other.jobId && one.linkId === other.linkId;
}
