import { assetPath } from '../../assets.ts';
import type { Paper } from '../../sheets/paper.ts';
import type { IssuedSheet } from '../../store/issued.ts';
import type { PageFrame } from '../page.ts';
import { headAddress, issuedFoot } from '../sheet-head.ts';
import { dayAndTime } from '../jobs/times.ts';
import { sheetLabel } from './issued-rows.ts';
import type { TodayView } from './today-view.ts';

/** Where an issued sheet's page leads; empty addresses are not shown. */
export interface IssuedPlaces {
  readonly backAddress: string;
  readonly backWords: string;
  readonly pdfAddress: string;
  readonly documentAddress: string;
}

export interface IssuedPage extends PageFrame, IssuedPlaces {
  readonly label: string;
  readonly paper: Paper;
  /** What was frozen: HTML of our own templates. */
  readonly page: string;
  readonly issuedWords: string;
  readonly newestRevision: string;
  readonly isSuperseded: boolean;
  readonly hasDocument: boolean;
  /** Whether the numbers would be the same today; one, or none where it is not looked into. */
  readonly today: readonly TodayView[];
}

/** An issued sheet as it was frozen, with what is known of it today above it. */
export function issuedPage(
  sheet: IssuedSheet,
  page: string,
  places: IssuedPlaces,
  today: readonly TodayView[],
): IssuedPage {
  const label = sheetLabel(sheet);
  const by = sheet.madeBy === '' ? '' : ` by ${sheet.madeBy}`;
  return {
    pageTitle: `${sheet.title} · Sheet ${label}`,
    styles: [assetPath('sheet.css'), headAddress(sheet.title, label, issuedFoot(sheet))],
    scripts: [],
    isWaiting: false,
    ...places,
    label,
    paper: sheet.paper,
    page,
    issuedWords: `Sheet ${label}, issued ${dayAndTime(sheet.madeAt)}${by}. It is shown as it was issued, and never changes.`,
    newestRevision: sheet.newestRevision,
    isSuperseded: sheet.isSuperseded,
    hasDocument: places.documentAddress !== '',
    today,
  };
}
