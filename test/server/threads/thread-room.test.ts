import { getPriority, platform } from 'node:os';
import { setImmediate, setTimeout } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { openThreadRoom, type RoomRules, type ThreadRoom } from '../../../server/threads/thread-room.ts';

interface Order {
  readonly order: 'answer' | 'who' | 'age' | 'niceness' | 'late' | 'end' | 'throw' | 'forever';
}
type Room = ThreadRoom<Order, string>;

const program = new URL('./obedient.mjs', import.meta.url);
const opened: Room[] = [];
afterEach(() => Promise.all(opened.splice(0).map((room) => room.close())));

describe.each(['thread', 'process'] as const)('a room of one %s', (kind) => {
  const open = (rules: Partial<RoomRules> = {}): Room => {
    const usual = { kind, most: 1, mostWaiting: 5, patience_ms: 30_000, grace_ms: 0, mostOrders: 100 };
    const room = openThreadRoom<Order, string>(program, { ...usual, ...rules });
    opened.push(room);
    return room;
  };
  const cancelled = { fault: 'cancelled' };

  it('answers one order after another, by the same', async () => {
    const room = open();
    const answers = await Promise.all([1, 2, 3].map(() => room.ask({ order: 'answer' })));
    expect(answers).toEqual(['1', '2', '3']);
  });

  it.each(['end', 'throw'] as const)(
    'says when it comes to its end (%s), and a new one does the next',
    async (order) => {
      const room = open();
      await room.ask({ order: 'answer' });
      const [died, next] = [room.ask({ order }), room.ask({ order: 'answer' })];
      await expect(died).rejects.toMatchObject({ fault: 'ended' });
      expect(await next).toBe('1');
    },
  );

  it('gives up what takes too long, even where it never listens, and goes on', async () => {
    const room = open();
    await expect(room.ask({ order: 'forever' }, { patience_ms: 300 })).rejects.toMatchObject({
      fault: 'too-slow',
    });
    expect(await room.ask({ order: 'answer' })).toBe('1');
  });

  it('ends work that nobody waits for, begun or not', async () => {
    const room = open();
    const [begun, queued] = [new AbortController(), new AbortController()];
    const first = room.ask({ order: 'forever' }, { signal: begun.signal });
    const second = room.ask({ order: 'answer' }, { signal: queued.signal });
    queued.abort();
    await expect(second).rejects.toMatchObject(cancelled);
    begun.abort();
    await expect(first).rejects.toMatchObject(cancelled);
    await expect(room.ask({ order: 'answer' }, { signal: begun.signal })).rejects.toMatchObject(cancelled);
    expect(await room.ask({ order: 'answer' })).toBe('1');
  });

  it('lets work that nobody waits for come to an end by itself within the grace, and keeps who did it', async () => {
    const room = open({ grace_ms: 20_000 });
    const gone = new AbortController();
    await room.ask({ order: 'answer' });
    const late = room.ask({ order: 'late' }, { signal: gone.signal });
    await setImmediate();
    gone.abort();
    await expect(late).rejects.toMatchObject(cancelled);
    expect(await room.ask({ order: 'answer' })).toBe('3');
  });

  it('refuses more than may wait', async () => {
    const room = open({ mostWaiting: 1 });
    const gone = new AbortController();
    const { signal } = gone;
    const begun = [room.ask({ order: 'forever' }, { signal }), room.ask({ order: 'forever' }, { signal })];
    await expect(room.ask({ order: 'answer' })).rejects.toMatchObject({ fault: 'busy' });
    gone.abort();
    expect((await Promise.allSettled(begun)).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  });

  it('replaces who has done so many', async () => {
    const room = open({ mostOrders: 2 });
    const counts: string[] = [];
    for (let i = 0; i < 4; i++) counts.push(await room.ask({ order: 'answer' }));
    expect(counts).toEqual(['1', '2', '1', '2']);
  });

  it('started ahead is the one that answers', async () => {
    const room = open();
    room.warm();
    room.warm();
    expect(await room.ask({ order: 'answer' })).toBe('1');
    expect(await room.ask({ order: 'answer' })).toBe('2');
  });

  it('that stays ready starts the next before it is asked', async () => {
    const room = open({ mostOrders: 1, staysReady: true });
    expect(await room.ask({ order: 'answer' })).toBe('1');
    await setTimeout(1500);
    expect(Number(await room.ask({ order: 'age' }))).toBeGreaterThan(750);
  });

  it('ends who has been idle for so long, and starts another when there is work', async () => {
    const room = open({ idle_ms: 200 });
    expect(await room.ask({ order: 'answer' })).toBe('1');
    expect(await room.ask({ order: 'answer' })).toBe('2');
    await setTimeout(700);
    expect(await room.ask({ order: 'answer' })).toBe('1');
  });

  it.skipIf(platform() !== 'linux')('stands back alone, and whoever asks does not', async () => {
    const own = getPriority();
    expect(await open().ask({ order: 'niceness' })).toBe(String(own));
    expect(await open({ niceness: 7 }).ask({ order: 'niceness' })).toBe(String(Math.min(19, own + 7)));
    expect(getPriority()).toBe(own);
  });

  it('closed answers nothing any more of what waits', async () => {
    const room = open();
    const asked = [room.ask({ order: 'forever' }), room.ask({ order: 'answer' })];
    const settled = Promise.allSettled(asked);
    await room.close();
    expect((await settled).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  });
});

it('works at the same time in as many as it may have, each its own process', async () => {
  const rules: RoomRules = {
    kind: 'process',
    most: 2,
    mostWaiting: 5,
    patience_ms: 30_000,
    grace_ms: 0,
    mostOrders: 9,
  };
  const room = openThreadRoom<Order, string>(program, rules);
  opened.push(room);
  const pids = await Promise.all([room.ask({ order: 'who' }), room.ask({ order: 'who' })]);
  expect(new Set([...pids, String(process.pid)]).size).toBe(3);
});

it('says that a program could not be started', async () => {
  for (const kind of ['thread', 'process'] as const) {
    const rules: RoomRules = {
      kind,
      most: 1,
      mostWaiting: 5,
      patience_ms: 30_000,
      grace_ms: 0,
      mostOrders: 9,
    };
    const room = openThreadRoom<Order, string>(new URL('./no-such-program.mjs', import.meta.url), rules);
    opened.push(room);
    await expect(room.ask({ order: 'answer' })).rejects.toMatchObject({ fault: 'ended' });
  }
});
