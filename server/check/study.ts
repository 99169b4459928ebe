import { DocumentError } from '../../calc/index.ts';
import type { CheckResult, PropsAnswer } from '../../shared/check-result.ts';
import { openThreadRoom, type RoomRules } from '../threads/thread-room.ts';
import { knownAnswer, rememberAnswer } from './known-answers.ts';
import type { Studied, StudyOrder } from './study-worker.ts';

/** Where checks that take their time are worked out, so that nobody else waits for them. */
export interface Study {
  /**
   * @param signal ends the work where nobody waits for it any more
   * @throws DocumentError with every error of the document
   * @throws ThreadError where no answer comes
   */
  check(document: unknown, signal?: AbortSignal): Promise<CheckResult>;
  /** The same for a search. */
  props(document: unknown, signal?: AbortSignal): Promise<PropsAnswer>;
  close(): Promise<void>;
}

const program = new URL('./study-worker.ts', import.meta.url);

/** A check is done sooner than a new thread starts; a search is not. */
const rules: Readonly<Record<StudyOrder['study'], RoomRules>> = {
  check: { kind: 'thread', most: 1, mostWaiting: 40, patience_ms: 60_000, grace_ms: 3000, mostOrders: 5000 },
  props: { kind: 'thread', most: 1, mostWaiting: 10, patience_ms: 60_000, grace_ms: 0, mostOrders: 500 },
};

/**
 * Opens a study; its threads start with the first question. What was checked is remembered for whoever asks again. Searches
 * have a thread of their own, so that no check waits for one.
 */
export function openStudy(): Study {
  const checks = openThreadRoom<StudyOrder, Studied>(program, rules.check);
  const searches = openThreadRoom<StudyOrder, Studied>(program, rules.props);
  return {
    async check(document, signal = stays()) {
      const known = knownAnswer(document);
      if (known !== undefined) return known;
      const answer = sound(await checks.ask({ study: 'check', document }, { signal }));
      if (answer.study !== 'check') throw new Error('The study answered another question.');
      rememberAnswer(document, answer.result);
      return answer.result;
    },
    async props(document, signal = stays()) {
      const answer = sound(await searches.ask({ study: 'props', document }, { signal }));
      if (answer.study !== 'props') throw new Error('The study answered another question.');
      return answer.result;
    },
    async close() {
      await Promise.all([checks.close(), searches.close()]);
    },
  };
}

function stays(): AbortSignal {
  return new AbortController().signal;
}

function sound(answer: Studied): Studied {
  if (answer.study === 'refused') throw new DocumentError([...answer.errors]);
  if (answer.study === 'fault') throw new Error(answer.message);
  return answer;
}

/** Whether a document is of an element whose check takes longer than others may wait for. */
export function takesItsTime(document: unknown): boolean {
  return (
    typeof document === 'object' &&
    document !== null &&
    'element' in document &&
    (document.element === 'counter-overhang' || document.element === 'counter-run')
  );
}
