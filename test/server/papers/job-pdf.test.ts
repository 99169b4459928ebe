import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { demoCheck } from '../../../server/demo.ts';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { fillForm, queryOf, textsOf } from '../../../server/form/index.ts';
import { addCheck } from '../../../server/store/checks.ts';
import { makeJob, noWords } from '../../../server/store/jobs.ts';
import { localOffice } from '../../../server/store/offices.ts';
import { standingOf } from '../../../server/check/standing.ts';
import { tableValue } from '../../../server/view-models/sheet-prose.ts';
import { showUsed } from '../../../shared/quantity/index.ts';
import { findProgram } from '../../run/programs.ts';
import { createPdfWorkers } from '../../../server/sheets/pdf/workers.ts';
import { makeLink } from '../../../server/store/share-links.ts';
import { cookieOf, letIn, site } from '../accounts/office.ts';
import { visitor } from '../jobs/visitor.ts';
import { serve, type Served } from '../serve.ts';
import { pagesOf, readPdf, smallestLetters_pt, squeezed } from '../sheets/pdf/read-pdf.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

const example = (name: string): object =>
  JSON.parse(readFileSync(new URL(`../../../docs/examples/${name}.json`, import.meta.url), 'utf8')) as object;
const thin = { ...demoCheck, title: 'Thin shelf', board: { ...demoCheck.board, thickness: '1/2 in' } };
const sound: readonly object[] = [demoCheck, example('coat-rail'), thin, example('stone-counter')];
const wrong = { ...demoCheck, title: 'Half a shelf', board: { ...demoCheck.board, length: 'banana' } };
const actor = { officeId: localOffice, name: '' };
/** Words without their spaces and hyphens: lines may end at either. */
const letters = (text: string): string => squeezed(text).replace(/[ -]/g, '');

async function jobWith(words: object, documents: readonly object[]): Promise<string> {
  const job = await makeJob(served.store, actor, { ...noWords, name: 'House by the mill', ...words });
  for (const document of documents) {
    const form = queryOf(fillForm(document));
    await addCheck(served.store, actor, job.id, {
      form,
      standing: standingOf(checkInPlace(textsOf(form))),
      reason: '',
    });
  }
  return `/jobs/${job.id}`;
}

/** Begins a PDF and waits until it is over. @returns the address where it is */
async function made(job: string, paper = 'letter'): Promise<string> {
  const someone = visitor(served);
  const begun = await someone.send(`${job}/papers`, { paper });
  expect(begun.status).toBe(303);
  const address = begun.headers.get('location') ?? '';
  while ((await someone.page(address)).includes('<progress')) {
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return address;
}

async function pdfOf(job: string, paper = 'letter'): Promise<Buffer> {
  const response = await visitor(served).get(`${await made(job, paper)}/file`);
  expect(response.status).toBe(200);
  expect(response.headers.get('content-type')).toBe('application/pdf');
  return Buffer.from(await response.arrayBuffer());
}

describe.skipIf(findProgram('pdftotext') === undefined)('the PDF of a whole job', () => {
  let pdf: Buffer;
  let pages: string[];
  beforeAll(async () => {
    const job = await jobWith(
      {
        client: 'A. Client',
        address: '3 Long Lane',
        reference: 'R-77',
        preparedBy: 'A. Nyone',
        checkedBy: 'S. Omeone',
        edition: 'Code of the place',
        authority: 'The county',
        notes: 'First note\n\nSecond note',
      },
      [...sound, wrong],
    );
    pdf = await pdfOf(job);
    pages = await pagesOf(pdf);
  });

  it('begins with a cover that says whose job it is, how every check stands, and the cautions', () => {
    const cover = pages[0] ?? '';
    for (const words of [
      'House by the mill',
      'A. Client',
      '3 Long Lane',
      'R-77',
      'A. Nyone',
      'S. Omeone',
      'Code of the place',
      'The county',
      'First note',
      'Second note',
      'Signature',
      'Not issued',
    ]) {
      expect(cover).toContain(words);
    }
    sound.forEach((document, index) => {
      const { verdict, governing, checks, cautions } = check(document, { waysOut: false });
      const governs = checks.find(({ id }) => id === governing);
      const word = { holds: 'Holds', 'does-not-hold': 'Does not hold', 'cannot-say': 'Cannot say' }[verdict];
      const title = 'title' in document ? String(document.title) : '';
      const used = governs?.ratio === null || governs === undefined ? '' : showUsed(governs.ratio);
      expect(letters(cover)).toContain(letters(`1-${index + 1} ${title} ${word} ${governs?.title} ${used}`));
      for (const caution of cautions) expect(letters(cover)).toContain(letters(caution));
    });
    expect(letters(cover)).toContain(letters('1-5 Half a shelf Unfinished'));
  });

  it('has every check in full: what governs, demand and capacity, its assumptions and its cautions', () => {
    const text = letters(pages.join(' '));
    for (const document of sound) {
      const { checks, assumptions, cautions } = check(document, { waysOut: false });
      for (const { title, demand, capacity, ratio } of checks) {
        for (const words of [title, demand?.shown ?? '', capacity?.shown ?? '']) {
          expect(text).toContain(letters(tableValue(words)));
        }
        if (ratio !== null) expect(text).toContain(letters(showUsed(ratio)));
      }
      for (const words of [...assumptions, ...cautions]) expect(text).toContain(letters(words));
    }
    expect(text).not.toMatch(/NaN|undefined|\[object|\[U\+/);
  });

  it('has a page for a check that can’t be worked out, which says what is missing, with the cautions', () => {
    const page = pages.find((each) => each.includes('1-5 Half a shelf') && !each.includes('Contents')) ?? '';
    expect(page).toContain('Unfinished.');
    expect(page).toContain('What is to be put right');
    expect(page).toContain('board, length');
    expect(letters(page)).toContain(letters('This is a calculation aid.'));
  });

  it('numbers its sheets through, each with the job, the check and that it is not issued', () => {
    pages.forEach((page, index) => {
      expect(page).toContain(`Sheet ${index + 1} of ${pages.length}`);
      expect(page).toContain('Job 1 · House by the mill');
      expect(page).toContain('Not issued: a working copy of Job 1');
      if (index > 0) expect(page).toMatch(/Check 1-[1-5]/);
    });
  });

  it('keeps the page to the wall on one sheet with letters of 14 points, the rest of the job around it', async () => {
    const walls = pages.filter((page, index) => index > 0 && page.includes('Installer’s sheet:'));
    expect(walls).toHaveLength(2);
    for (const wall of walls) expect(wall).toContain('The calculation sheet has more cautions');
    const wallAt = pages.findIndex((page, index) => index > 0 && page.includes('Installer’s sheet:')) + 1;
    expect(await smallestLetters_pt(pdf, wallAt)).toBeGreaterThanOrEqual(14);
  });

  it('has contents whose page numbers lead to where the titles are', () => {
    const lines = [
      ...((pages[0] ?? '')
        .split('Contents')[1]
        ?.matchAll(/(1-\d [^.]+?|Installer’s sheet: [^.]+?) ?(?:\. ?)+(\d+)/g) ?? []),
    ];
    const listed = lines.map(([, title = '', page = '']) => ({ title: title.trim(), page: Number(page) }));
    expect(listed.map(({ title }) => title.replace(/^(1-\d).*/, '$1'))).toEqual([
      '1-1',
      `Installer’s sheet: ${demoCheck.title}`,
      '1-2',
      '1-3',
      'Installer’s sheet: Thin shelf',
      '1-4',
      '1-5',
    ]);
    for (const { title, page } of listed) {
      const found = pages.findIndex((text, index) => index > 0 && letters(text).includes(letters(title))) + 1;
      expect(page, title).toBe(found);
    }
  });

  it('has a bookmark for every check with its sections below, tags, fonts inside, and is for archives', async () => {
    const { outline, info, metadata, structure, fonts } = await readPdf(pdf);
    for (const [index] of [...sound, wrong].entries()) expect(outline).toContain(`1-${index + 1} `);
    expect(outline).toMatch(
      /1-1 [^<]*<\/item>\s*<outline>.*Given.*Summary.*Installer.*<\/outline>\s*<item[^>]*>1-2 /s,
    );
    expect(info).toMatch(/Tagged: +yes/);
    expect(info).toMatch(/Title: +House by the mill/);
    expect(metadata).toMatch(/pdfaid:conformance>A</);
    for (const tag of ['H1', 'H2', 'Table', 'TOC', 'TOCI', 'Figure', 'Formula', 'L']) {
      expect(structure).toMatch(new RegExp(`^ *${tag}\\b`, 'm'));
    }
    for (const font of fonts) expect(font).toMatch(/ yes (?:yes|no ) yes +\d+ +\d+$/);
  });

  it('is on the paper that was asked for, and is dated by the day it was made', async () => {
    const job = await jobWith({}, [example('coat-rail')]);
    const [letter, a4] = [await readPdf(await pdfOf(job)), await readPdf(await pdfOf(job, 'a4'))];
    expect(letter.info).toMatch(/Page size: +612 x 792/);
    expect(a4.info).toMatch(/Page size: +595\.\d+ x 841\.\d+/);
    expect(letter.info).toMatch(new RegExp(`CreationDate: .*${new Date().getUTCFullYear()}`));
  });

  it('of a job without checks says so', async () => {
    const [cover, ...more] = await pagesOf(await pdfOf(await jobWith({}, [])));
    expect(cover).toContain('There are no checks in this job yet.');
    expect(letters(cover ?? '')).toContain(letters('This is a calculation aid.'));
    expect(more).toEqual([]);
  });

  it('leaves what users write as it is written', async () => {
    const hostile = '#panic("x") $x$ *b* ] [ <script>alert(1)</script> \\u{41}';
    const words = { name: hostile, client: hostile, address: hostile, reference: hostile, notes: hostile };
    const people = { preparedBy: hostile, checkedBy: hostile, edition: hostile, authority: hostile };
    const job = await jobWith({ ...words, ...people }, [
      { ...demoCheck, title: hostile },
      { ...wrong, title: hostile },
    ]);
    const [cover = '', ...rest] = await pagesOf(await pdfOf(job));
    expect(letters(cover).split(letters(hostile)).length - 1).toBeGreaterThanOrEqual(11);
    expect(letters(rest.join(' ')).split(letters(hostile)).length - 1).toBeGreaterThan(10);
  });
});

describe('the making of a PDF of a job', () => {
  it('tells how far it is, with and without scripts, and ends when it is cancelled', async () => {
    const someone = visitor(served);
    const job = await jobWith(
      {},
      Array.from({ length: 40 }, (_, i) => ({ ...demoCheck, title: `Shelf ${i}` })),
    );
    const address = (await someone.send(`${job}/papers`)).headers.get('location') ?? '';
    const page = await someone.page(address);
    expect(page).toMatch(/Working out check \d+ of 40/);
    expect(page).toContain('http-equiv="refresh"');
    const part = await someone.get(address, { 'HX-Request': 'true' });
    expect(await part.text()).toMatch(/^\s*<div class="making"/);
    expect((await someone.send(`${job}/papers`)).headers.get('location')).toBe(address);
    const early = await someone.get(`${address}/file`);
    expect([early.status, early.headers.get('location')]).toEqual([303, address]);
    for (const _ of [1, 2]) {
      const cancelled = await someone.send(`${address}/cancel`);
      expect([cancelled.status, cancelled.headers.get('location')]).toEqual([303, address]);
    }
    const after = await someone.page(address);
    expect(after).toContain('It was cancelled');
    expect(after).not.toContain('http-equiv="refresh"');
    expect((await someone.get(`${address}/file`)).headers.get('location')).toBe(address);
  });

  it('that is not known here any more is said to be gone, and another is offered', async () => {
    const someone = visitor(served);
    const job = await jobWith({}, []);
    for (const id of ['0123456789abcdef01234567', 'x', '%00']) {
      const response = await someone.get(`${job}/papers/${id}`);
      expect(response.status).toBe(404);
      const page = await response.text();
      expect(page).toContain('is not kept any more');
      expect(page).toContain(`action="${job}/papers"`);
      expect((await someone.send(`${job}/papers/${id}/cancel`)).status).toBe(303);
    }
  });

  it('refuses a job of more checks than one PDF can hold, in words', async () => {
    const job = await jobWith(
      {},
      Array.from({ length: 61 }, () => wrong),
    );
    const response = await visitor(served).send(`${job}/papers`);
    expect(response.status).toBe(422);
    expect(await response.text()).toContain('The job has 61 checks');
  });

  it('goes on where the job is deleted in the middle, and says so where the store is gone', async () => {
    const own = await serve();
    const someone = visitor(own);
    const job = await someone.beginJob();
    await someone.addDemo(job);
    const address = (await someone.send(`${job}/papers`)).headers.get('location') ?? '';
    await someone.send(`${job}/delete`);
    expect((await someone.get(address)).status).toBe(200);
    await own.store.db.deleteFrom('revision').execute();
    await own.store.db.deleteFrom('jobCheck').execute();
    await own.store.db.deleteFrom('job').execute();
    expect((await someone.get(address)).status).toBe(404);
    expect((await someone.get(`${address}/file`)).status).toBe(404);
    await own.store.close();
    expect((await someone.get(address)).status).toBe(503);
    await own.close();
  });

  it('says so where what sets the pages has died, and offers to make it again', async () => {
    const pdfs = createPdfWorkers(undefined, new URL('./no-such-program.mjs', import.meta.url));
    const own = await serve(undefined, { pdfs });
    const someone = visitor(own);
    const job = await someone.beginJob();
    const address = (await someone.send(`${job}/papers`)).headers.get('location') ?? '';
    let page = await someone.page(address);
    while (page.includes('<progress')) {
      await new Promise((resolve) => setTimeout(resolve, 50));
      page = await someone.page(address);
    }
    expect(page).toContain('The pages could not be set.');
    expect(page).toContain(`action="${job}/papers"`);
    expect(own.faults).toHaveLength(1);
    await own.close();
    await pdfs.close();
  });

  it('by a link is for whoever has the link alone, and has no notes in it', async () => {
    const own = await serve(site);
    const owner = await letIn(own.store, 'here', 'owner', 'O. Wner');
    const [inside, outside] = [visitor(own, await cookieOf(own.store, owner)), visitor(own)];
    const job = await inside.beginJob({ name: 'House by the mill', notes: 'Never pays' });
    const key = await makeLink(own.store, { officeId: 'here', name: '' }, job.replace('/jobs/', ''), 'C', 30);
    const begun = await outside.send(`/shared/${key}/papers`, { paper: 'a4' });
    const address = begun.headers.get('location') ?? '';
    expect(address).toMatch(/^\/shared\/.*\/papers\/[0-9a-f]{24}$/);
    while ((await outside.page(address)).includes('<progress')) {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    expect(await outside.page(address)).not.toContain('href="/jobs');
    const file = await outside.get(`${address}/file`);
    const [cover] = await pagesOf(Buffer.from(await file.arrayBuffer()));
    expect(cover).toContain('House by the mill');
    expect(cover).not.toContain('Never pays');
    const id = address.replace(/^.*\//, '');
    expect((await inside.get(`${job}/papers/${id}`)).status).toBe(404);
    const theirs = (await inside.send(`${job}/papers`)).headers.get('location') ?? '';
    expect((await outside.get(address.replace(id, theirs.replace(/^.*\//, '')))).status).toBe(404);
    expect((await outside.get(theirs)).status).toBe(303);
    await own.close();
  });

  it('left no fault of the program', () => expect(served.faults).toEqual([]));
});
