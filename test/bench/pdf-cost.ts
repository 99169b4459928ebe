import { monitorEventLoopDelay } from 'node:perf_hooks';
import { checkInPlace } from '../../server/check/in-place.ts';
import { demoCheck } from '../../server/demo.ts';
import { fillForm, queryOf, textsOf } from '../../server/form/index.ts';
import { openJobPaperMaker } from '../../server/papers/make-job-paper.ts';
import { paperSheet } from '../../server/sheets/pdf/paper-sheet.ts';
import { createPrintable } from '../../server/sheets/pdf/printable.ts';
import { createPdfWorkers, type PdfWorkers } from '../../server/sheets/pdf/workers.ts';
import { sheetOf } from '../../server/sheets/sheet-of.ts';
import { noWords } from '../../server/store/jobs.ts';
import { createTypesetter, texAsItIs } from '../../server/typeset/index.ts';
import { sheetModel } from '../../server/view-models/sheet.ts';
import { figures, type Row } from './report.ts';
import { median } from './timing.ts';

const mostSheet_ms = 400;
const mostJob_ms = 5000;
const mostBlock_ms = 50;

/** How many PDFs of a sheet and of a job, and how many checks the job has. */
export interface PdfCounts {
  readonly sheets: number;
  readonly jobs: number;
  readonly checks: number;
}

/**
 * The PDF of the demo sheet, from its form to the last byte, when the setter is warm; that of a job, and for how long this
 * program answered nobody meanwhile. No two are of the same words, so that nothing is remembered.
 */
export async function pdfCost({ sheets, jobs, checks }: PdfCounts): Promise<Row[]> {
  const pdfs = createPdfWorkers();
  try {
    const sheet = await sheetRow(pdfs, sheets);
    return [sheet, ...(await jobRows(pdfs, jobs, checks))];
  } finally {
    await pdfs.close();
  }
}

const { signal } = new AbortController();
const formOf = (title: string): string => queryOf(fillForm({ ...demoCheck, title }));

async function sheetRow(pdfs: PdfWorkers, sheets: number): Promise<Row> {
  const typesetter = createTypesetter(texAsItIs);
  const printable = createPrintable();
  const make = async (title: string): Promise<number> => {
    const start = performance.now();
    const reading = sheetOf(checkInPlace(textsOf(formOf(title)), false), 'letter');
    if (!reading.ok) throw new Error('the demo check has no sheet');
    const data = paperSheet(sheetModel(reading.sheet.checked, typesetter, reading.sheet.context), printable);
    await pdfs.make({ template: 'sheet', json: JSON.stringify(data), made_s: 0 }, signal);
    return performance.now() - start;
  };
  for (let turn = 0; turn < 5; turn++) await make(`Warming ${turn}`);
  const spent_ms: number[] = [];
  for (let turn = 0; turn < sheets; turn++) spent_ms.push(await make(`Sheet ${turn}`));
  const middle = median(spent_ms);
  return {
    what: 'PDF of the demo sheet, from its form, warm, ms',
    measured: figures(middle),
    target: `under ${mostSheet_ms}`,
    met: middle < mostSheet_ms,
    information: `${sheets} PDFs, the slowest ${figures(Math.max(...spent_ms))} ms`,
  };
}

async function jobRows(pdfs: PdfWorkers, jobs: number, checks: number): Promise<Row[]> {
  const maker = openJobPaperMaker(pdfs);
  const spent_ms: number[] = [];
  const blocked_ms: number[] = [];
  try {
    for (let turn = -1; turn < jobs; turn++) {
      const order = {
        job: { ...noWords, name: `Job ${turn}`, number: 1 },
        paper: 'letter',
        made: 'now',
        made_s: 0,
        hasNotes: true,
        checks: Array.from({ length: checks }, (_, index) => ({
          number: index + 1,
          issued: '',
          form: formOf(`Shelf ${turn} ${index}`),
        })),
      } as const;
      const loop = monitorEventLoopDelay({ resolution: 1 });
      loop.enable();
      const start = performance.now();
      await maker.make(order, () => undefined, signal);
      loop.disable();
      // The first warms up what works the checks out.
      if (turn < 0) continue;
      spent_ms.push(performance.now() - start);
      blocked_ms.push(loop.max / 1e6);
    }
  } finally {
    await maker.close();
  }
  const [spent, blocked] = [median(spent_ms), median(blocked_ms)];
  return [
    {
      what: `PDF of a job of ${checks} checks, ms`,
      measured: figures(spent),
      target: `under ${mostJob_ms}`,
      met: spent < mostJob_ms,
      information: `${jobs} PDFs, ${spent_ms.map(figures).join(', ')} ms`,
    },
    {
      what: `PDF of a job of ${checks} checks, the longest the program answers nobody meanwhile, ms`,
      measured: figures(blocked),
      target: `under ${mostBlock_ms}`,
      met: blocked < mostBlock_ms,
      information: `${blocked_ms.map(figures).join(', ')} ms`,
    },
  ];
}
