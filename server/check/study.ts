import { DocumentError } from '../../calc/index.ts';
import type { CheckResult, PropsAnswer } from '../../shared/check-result.ts';
import { openThreadRoom } from '../threads/thread-room.ts';
import { rememberAnswer } from './known-answers.ts';
import type { Studied, StudyOrder } from './study-worker.ts';

/** Where checks that take their time are worked out, so that nobody else waits for them. */
export interface Study {
  /** @throws DocumentError with every error of the document */
  check(document: unknown): Promise<CheckResult>;
  /** @throws DocumentError with every error of the document */
  props(document: unknown): Promise<PropsAnswer>;
  close(): Promise<void>;
}

/** Opens a study; its thread starts with the first question. What was checked is remembered for whoever asks again. */
export function openStudy(longest_ms = 60_000): Study {
  const worker = new URL('./study-worker.ts', import.meta.url);
  const room = openThreadRoom<StudyOrder, Studied>(worker, { longest_ms, mostOfOneThread: 5_000 });
  const ask = async (order: StudyOrder) => {
    const answer = await room.ask(order);
    if (answer.study === 'refused') throw new DocumentError([...answer.errors]);
    if (answer.study === 'fault') throw new Error(answer.message);
    return answer;
  };
  return {
    async check(document) {
      const answer = await ask({ study: 'check', document });
      if (answer.study !== 'check') throw new Error('The study answered another question.');
      rememberAnswer(document, answer.result);
      return answer.result;
    },
    async props(document) {
      const answer = await ask({ study: 'props', document });
      if (answer.study !== 'props') throw new Error('The study answered another question.');
      return answer.result;
    },
    close: () => room.close(),
  };
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
