import type { Checked } from '../check/answer-to.ts';
import type { CheckState } from '../check/check-state.ts';
import type { AskedSheet } from '../sheets/sheet-of.ts';
import type { Templates } from '../templates.ts';
import type { Typesetter } from '../typeset/index.ts';
import { checkPage, type CheckPlace } from '../view-models/check-page.ts';
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
      readonly state: CheckState;
      readonly region: Region;
      /** Not given: its own address alone. */
      readonly place?: CheckPlace;
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

/** Makes a page as HTML. */
export function makePage(order: PageOrder, { templates, typesetter }: Views): string {
  switch (order.page) {
    case 'check': {
      const { state, region, place } = order;
      const page = checkPage(state, typesetter, place);
      if (region === 'page') return templates.page('check', page);
      return region === 'answer' ? templates.partial('answer', page.answer) : templates.partial('work', page);
    }
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
