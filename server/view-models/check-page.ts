import type { CheckState } from '../check/check-state.ts';
import type { Typesetter } from '../typeset/index.ts';
import { answerView, type AnswerView } from './answer.ts';
import type { Opened } from './checks.ts';
import type { IssuedList } from './issued/issued-rows.ts';
import { checkForm, type CheckForm } from './form/index.ts';
import { pageFrame, type PageFrame } from './page.ts';

export interface CheckPage extends PageFrame {
  readonly form: Omit<CheckForm, 'labels'>;
  readonly method: string;
  readonly place: CheckPlace;
  readonly answer: AnswerView & { readonly keeping: readonly KeepingView[] };
}

/** Where a check is kept: in its own address alone, or in a job. */
export interface CheckPlace {
  /** Where its form is sent. */
  readonly action: string;
  /** Whether it saves itself there. */
  readonly isKept: boolean;
  /** Fields that travel with the form and are none of the check's. */
  readonly hidden: readonly { readonly name: string; readonly value: string }[];
  /** The way back to the job: one, or none. */
  readonly trail: readonly TrailView[];
  /** The way to an issued sheet, and those there are: one, or none where nothing can be issued. */
  readonly issuing: readonly IssuingView[];
  /** What became of the last save: one, or none where nothing is saved. */
  readonly keeping: readonly KeepingView[];
}

export interface TrailView {
  readonly jobAddress: string;
  readonly job: string;
  readonly check: string;
  readonly historyAddress: string;
}

export interface IssuingView {
  /** Where a sheet is issued; empty for who may only look. */
  readonly issueAddress: string;
  readonly lists: readonly IssuedList[];
}

/** A line that says whether the check is saved, and the version that the next save goes on from. */
export interface KeepingView {
  readonly isSaved: boolean;
  readonly said: string;
  readonly base: string;
  /** What differs where somebody else saved in between. */
  readonly conflict: readonly ConflictView[];
}

export interface ConflictView {
  readonly said: string;
  readonly rows: readonly { readonly field: string; readonly mine: string; readonly theirs: string }[];
  readonly theirAddress: string;
  /** Their version: saving mine over it goes on from there. */
  readonly over: string;
}

const ownAddress: CheckPlace = {
  action: '/check',
  isKept: false,
  hidden: [],
  trail: [],
  issuing: [],
  keeping: [],
};

/** The page of a check: its form on one side, the answer on the other. */
export function checkPage(
  state: CheckState,
  typesetter: Typesetter,
  place: CheckPlace = ownAddress,
  opened: Opened = 'all',
): CheckPage {
  const { texts, reading, answer, at } = state;
  const form = checkForm({
    texts,
    reading,
    at,
    errors: answer.ok ? [] : answer.errors,
    sound: answer.ok ? answer.document : answer.sound,
  });
  const { labels: _, ...shown } = form;
  const answered = answerView(state, form, typesetter, opened);
  const links = { ...answered.links, canKeep: answered.links.canKeep && !place.isKept };
  return {
    ...pageFrame(form.heading),
    form: shown,
    method: state.isTooLong || place.isKept ? 'post' : 'get',
    place,
    answer: { ...answered, links, keeping: place.keeping },
  };
}
