import { DocumentError, readDocument } from '../../shared/check-document/index.ts';
import type { CheckResult } from '../../shared/check-result.ts';
import { openThreadRoom, type RoomRules, type ThreadRoom } from '../threads/thread-room.ts';
import type { Standing } from '../store/tables.ts';
import type { PageOrder } from '../pages/page-orders.ts';
import { answerOf, refusalOf } from './answer-to.ts';
import { withAnswer, type SentForm } from './check-state.ts';
import {
  workOut,
  type DocumentOrder,
  type Findings,
  type Found,
  type MadePage,
  type Search,
  type StudyOrder,
} from './findings.ts';
import { knownAnswer, rememberAnswer } from './known-answers.ts';
import { isLargeShelf, takesItsTime } from './pace.ts';
import { standingOf } from './standing.ts';
import type { Studied } from './studied.ts';

/** What is wanted of a check, and for how long. */
export interface CheckWish {
  /** Whether ways out are looked for where it fails or is close; they are unless it is said. */
  readonly waysOut?: boolean;
  /** Ends the work where nobody waits for it any more. */
  readonly signal?: AbortSignal;
}

/** Where checks and searches are worked out and shown, so that nobody else waits for them. */
export interface Study {
  /**
   * @throws DocumentError with every error of the document
   * @throws ThreadError where no answer comes
   */
  readonly check: (document: unknown, wish?: CheckWish) => Promise<CheckResult>;
  /** The same for a search. */
  search<S extends Search>(search: S, document: unknown, signal?: AbortSignal): Promise<Findings[S]>;
  /** How a form stands, in the words of a list; ways out are looked for where its page is wanted next. @throws ThreadError */
  readonly standing: (form: SentForm, isShownNext?: boolean) => Promise<Standing>;
  /** A page that shows a check; that is worked out for it, unless it just was. @throws ThreadError where none comes */
  readonly page: (order: PageOrder, signal?: AbortSignal) => Promise<MadePage<Buffer>>;
  /** Starts what checks shelves and makes pages ahead of the first one. */
  warm(): void;
  close(): Promise<void>;
}

/**
 * Each has a thread of its own: what is done in hundredths of a second waits for no counter or large shelf, which take some tenths,
 * and neither for a search, which can take seconds.
 */
type Place = 'quick' | 'counters' | 'aroundShelves' | 'aroundCounters';

const usual = { kind: 'thread', most: 1, patience_ms: 60_000 } as const;
/** What takes tenths of a second stands back for what is answered in hundredths. */
const patient = { ...usual, niceness: 5 } as const;
const searches = { ...patient, mostWaiting: 10, grace_ms: 0, mostOrders: 500, idle_ms: 30 * 60_000 } as const;

/** A check is done sooner than a new thread starts, a search is not. What a quick one leaves behind has an end. */
const rules: Readonly<Record<Place, RoomRules>> = {
  quick: { ...usual, mostWaiting: 200, grace_ms: 3000, mostOrders: Infinity },
  counters: { ...patient, mostWaiting: 40, grace_ms: 3000, mostOrders: 5000 },
  aroundShelves: searches,
  aroundCounters: searches,
};

const programs: Readonly<Record<Place, URL>> = {
  quick: new URL('./quick-worker.ts', import.meta.url),
  counters: new URL('./study-worker.ts', import.meta.url),
  aroundShelves: new URL('./study-worker.ts', import.meta.url),
  aroundCounters: new URL('./study-worker.ts', import.meta.url),
};

const placeOf: Readonly<Record<Search, Place>> = {
  layouts: 'aroundShelves',
  reach: 'aroundShelves',
  props: 'aroundCounters',
};

/**
 * Opens a study; its threads start with the first question. Checks that took their time are remembered for whoever asks again.
 */
export function openStudy(): Study {
  const open = (place: Place): ThreadRoom<StudyOrder, Studied> =>
    openThreadRoom(programs[place], rules[place]);
  const rooms: Readonly<Record<Place, ThreadRoom<StudyOrder, Studied>>> = {
    quick: open('quick'),
    counters: open('counters'),
    aroundShelves: open('aroundShelves'),
    aroundCounters: open('aroundCounters'),
  };
  const ask = async <S extends keyof Findings>(
    place: Place,
    order: StudyOrder & { readonly study: S },
    signal: AbortSignal | undefined,
  ): Promise<Findings[S]> =>
    resultOf(order.study, await rooms[place].ask(order, signal === undefined ? {} : { signal }));

  const check = async (
    document: unknown,
    { waysOut = true, signal }: CheckWish = {},
  ): Promise<CheckResult> => {
    const order = { study: 'check', document, waysOut } as const;
    refuse(order);
    if (!takesItsTime(document)) return ask(isLargeShelf(document) ? 'counters' : 'quick', order, signal);
    const known = knownAnswer(document);
    if (known !== undefined) return known;
    const result = await ask('counters', order, signal);
    rememberAnswer(document, result);
    return result;
  };
  /** What a check that takes its time comes to; null for others, and where something is wrong with it: that is found at once. */
  const lengthy = async (document: unknown, wish: CheckWish): Promise<CheckResult | null> => {
    if (!takesItsTime(document) && !isLargeShelf(document)) return null;
    const result = await check(document, wish).catch(refusalOf);
    return result instanceof DocumentError ? null : result;
  };
  return {
    check,
    search(study, document, signal) {
      const order = { study, document, waysOut: false } as const;
      refuse(order);
      return ask(placeOf[study], order, signal);
    },
    async standing(form, isShownNext = false) {
      const known = await lengthy(form.reading.document, { waysOut: false });
      if (known === null) return ask('quick', { study: 'standing', form, isShownNext }, undefined);
      return standingOf(withAnswer(form, answerOf(form.reading.document, known)));
    },
    async page(page, signal) {
      const known = 'form' in page ? await lengthy(page.form.reading.document, { signal }) : null;
      const { html, hasAnswer } = await ask('quick', { study: 'page', page, known }, signal);
      return { html: Buffer.from(html.buffer, html.byteOffset, html.byteLength), hasAnswer };
    },
    warm: () => rooms.quick.warm(),
    async close() {
      await Promise.all(Object.values(rooms).map((room) => room.close()));
    },
  };
}

/** What is wrong with a document is told at once; a thread gets what can be read alone, since not every nest of lists can go there. */
function refuse(order: DocumentOrder): void {
  if (!readDocument(order.document).ok) workOut(order);
}

function resultOf<S extends keyof Findings>(study: S, answer: Studied): Findings[S] {
  if (answer.study === 'refused') throw new DocumentError([...answer.errors]);
  if (answer.study === 'fault') throw new Error(answer.message);
  if (!isOf(study, answer)) throw new Error('The study answered another question.');
  return answer.result;
}

function isOf<S extends keyof Findings>(study: S, answer: { readonly study: string }): answer is Found<S> {
  return answer.study === study;
}
