import { expect, it } from 'vitest';
import { version } from '../../../calc/version.ts';
import { fillForm, queryOf } from '../../../server/form/index.ts';
import { demoCheck } from '../../../server/demo.ts';
import { standAnew } from '../../../server/jobs/stand-anew.ts';
import { ThreadError } from '../../../server/threads/thread-error.ts';

type Checks = Parameters<typeof standAnew>[2];

/** A check that another version stood, one of this version, and a tool that fails as it stands one anew. */
function standWith(failure: Error) {
  const form = queryOf(fillForm(demoCheck));
  const checks = [
    { id: 'old', tool: 'another', form, standing: 'holds', used: 0.5 },
    { id: 'new', tool: version, form, standing: 'holds', used: 0.5 },
  ] as unknown as Checks;
  const desk = { store: null, study: { standing: () => Promise.reject(failure) } };
  return standAnew(desk as unknown as Parameters<typeof standAnew>[0], null as never, checks);
}

it('a check at which the tool fails is unfinished in the list, and the others stand', async () => {
  expect(await standWith(new Error('a fault'))).toMatchObject([
    { id: 'old', standing: 'unfinished', used: null },
    { id: 'new', standing: 'holds', used: 0.5 },
  ]);
});

it('a tool that has no time says so for the whole list', async () => {
  await expect(standWith(new ThreadError('busy', 'too much to do'))).rejects.toThrow('too much to do');
});
