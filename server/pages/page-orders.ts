import type { CheckResult } from '../../shared/check-result.ts';
import { answerOf, type Checked } from '../check/answer-to.ts';
import { withAnswer, type CheckState, type SentForm } from '../check/check-state.ts';
import { rememberedInPlace } from '../check/in-place.ts';
import type { AskedSheet } from '../sheets/sheet-of.ts';
import type { Templates } from '../templates.ts';
import type { Typesetter } from '../typeset/index.ts';
import { checkPage, type CheckPlace } from '../view-models/check-page.ts';
import { workingView, type Opened } from '../view-models/checks.ts';
import { installerModel, type InstallerModel } from '../view-models/installer.ts';
import type { SheetHead } from '../view-models/sheet-head.ts';
import { installerPage, sheetPage } from '../view-models/sheet-page.ts';
import { sheetModel, type SheetContext, type SheetModel } from '../view-models/sheet.ts';

/** A sheet of a shelf: nothing else has a page that goes to the wall. */
interface AskedShelf extends AskedSheet {
  readonly checked: Extract<Checked, { readonly element: 'bracket-shelf' }>;
}

/** A region of the page of a check, or all of it. */
export type Region = 'page' | 'work' | 'answer';

/** A page that shows a check which was worked out: what is drawn, typeset and filled into templates for it. */
export type PageOrder =
  | {
      readonly page: 'check';
      readonly form: SentForm;
      readonly region: Region;
      /** Not given: all. */
      readonly opened?: Opened;
      /** Not given: its own address alone. */
      readonly place?: CheckPlace;
    }
  | {
      /** The lines of working of one check of it. */
      readonly page: 'working';
      readonly form: SentForm;
      readonly check: string;
    }
  | {
      readonly page: 'sheet';
      readonly asked: AskedSheet;
      /** Where the page's links go, where that is not to the check. */
      readonly addresses?: Partial<SheetModel>;
    }
  | {
      readonly page: 'installer';
      readonly asked: AskedShelf;
      readonly addresses?: Partial<InstallerModel>;
    }
  | {
      /** What is kept of an issued sheet: the sheet without the page around it. */
      readonly page: 'issued';
      readonly checked: Checked;
      readonly context: SheetContext;
      readonly head: SheetHead;
    };

/** What turns a check into a page. */
export interface Views {
  readonly templates: Templates;
  readonly typesetter: Typesetter;
}

interface PageText {
  readonly html: string;
  readonly hasAnswer: boolean;
}

/**
 * Makes a page.
 *
 * @param known what came of the check, where that took its time; null where it is worked out here
 */
export function makePage(order: PageOrder, known: CheckResult | null, views: Views): PageText {
  if (order.page === 'check') return checkPageOf(order, known, views);
  if (order.page === 'working') return workingOf(order, known, views);
  return { html: sheetOf(order, views), hasAnswer: true };
}

function checkPageOf(
  { form, region, opened, place }: Extract<PageOrder, { readonly page: 'check' }>,
  known: CheckResult | null,
  { templates, typesetter }: Views,
): PageText {
  const state = stateOf(form, known);
  const page = checkPage(state, typesetter, place, opened);
  const html = {
    page: () => templates.page('check', page),
    work: () => templates.partial('work', page),
    answer: () => templates.partial('answer', page.answer),
  }[region]();
  return { html, hasAnswer: state.answer.ok };
}

function workingOf(
  { form, check }: Extract<PageOrder, { readonly page: 'working' }>,
  known: CheckResult | null,
  { templates, typesetter }: Views,
): PageText {
  const { answer } = stateOf(form, known);
  const working = answer.ok ? workingView(check, answer.result, typesetter) : [];
  return {
    html: templates.partial('working-later', { working, isNone: working.length === 0 }),
    hasAnswer: answer.ok,
  };
}

function stateOf(form: SentForm, known: CheckResult | null): CheckState {
  return known === null ? rememberedInPlace(form) : withAnswer(form, answerOf(form.reading.document, known));
}

function sheetOf(
  order: Exclude<PageOrder, { readonly page: 'check' | 'working' }>,
  { templates, typesetter }: Views,
): string {
  switch (order.page) {
    case 'sheet': {
      const { checked, context } = order.asked;
      const page = sheetPage(sheetModel(checked, typesetter, context));
      return templates.page('sheet', { ...page, ...order.addresses });
    }
    case 'installer': {
      const { checked, context } = order.asked;
      const page = installerPage(installerModel(checked.document, checked.result, context));
      return templates.page('installer', { ...page, ...order.addresses });
    }
    case 'issued': {
      const { checked, context, head } = order;
      return templates.partial('sheet-whole', sheetModel(checked, typesetter, context, head));
    }
  }
}
