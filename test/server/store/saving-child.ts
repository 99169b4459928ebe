import { addCheck } from '../../../server/store/checks.ts';
import { makeJob, noWords } from '../../../server/store/jobs.ts';
import { ensureOffice } from '../../../server/store/offices.ts';
import { openStore } from '../../../server/store/open-store.ts';
import { saveCheck } from '../../../server/store/save-check.ts';

/* Saves one check over and over, telling its parent of each save once it is acknowledged, until it is killed. */

const [, , dataFolder = '', databaseUrl = ''] = process.argv;
const actor = { officeId: 'here', name: '' };
const standing = {
  element: 'bracket-shelf',
  title: '',
  standing: 'holds',
  governs: '',
  used: 0.5,
  tool: '1',
} as const;
const store = await openStore({ dataFolder, databaseUrl });
await ensureOffice(store, actor.officeId, 'Here');
const job = await makeJob(store, actor, { ...noWords, name: 'Kitchen' });
const check = await addCheck(store, actor, job.id, { form: 'n=0', standing, reason: '' });
if (check === undefined) throw new Error('no check');
for (let turn = 1; ; turn++) {
  const form = `n=${turn}&padding=${'x'.repeat(3000)}`;
  const saved = await saveCheck(store, actor, job.id, check.id, {
    form,
    standing,
    base: turn,
    editor: turn % 2 === 0 ? 'page' : '',
    turn,
    reason: '',
  });
  if (saved?.kind !== 'saved') throw new Error(`turn ${turn}: ${saved?.kind ?? 'gone'}`);
  process.stdout.write(`${check.id} ${turn}\n`);
}
