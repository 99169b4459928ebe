import { describe, expect, it } from 'vitest';
import { act, fillForm, readForm, textsOf, type Texts } from '../../../server/form/index.ts';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { shelf } from '../fixtures/shelf.ts';

const demo = fillForm(shelf);
const after = (doing: string, texts: Texts = demo) => {
  const acted = act(texts, doing);
  return { at: acted.at, document: readForm(acted.texts).document as unknown as typeof shelf };
};

describe('a button of the form', () => {
  it('adds a bracket in the middle of the widest gap', () => {
    const { document, at } = after('add:brackets.positions');
    expect(document.brackets.positions).toEqual(['8 in', '32 in', '64 in', '88 in', '48 in']);
    expect(at).toBe('brackets.positions.4');
  });

  it('removes a row with all that is in it and moves the next ones up', () => {
    const { document } = after('remove:loads.0');
    expect(document.loads).toEqual(shelf.loads?.slice(1));
  });

  it('moves a row up or down, and back again', () => {
    const { document } = after('down:loads.0');
    expect(document.loads?.map(({ name }) => name)).toEqual(['Stock pot', 'Plates and jugs', 'Hand leaning']);
    const back = act(act(demo, 'down:loads.0').texts, 'up:loads.1').texts;
    expect(readForm(back).document).toEqual(shelf);
  });

  it.each(['up:loads.0', 'down:loads.2', 'remove:loads.9', 'remove:loads', 'nonsense', 'up:__proto__.0'])(
    'that can do nothing changes nothing: %s',
    (doing) => {
      expect(after(doing).document).toEqual(shelf);
    },
  );

  it('takes a board from the list with what its strength comes from', () => {
    const { document } = after('board:panel=Plywood, softwood veneer core');
    expect(document.board.material).toBe('Plywood, softwood veneer core');
    expect(document.board.basis).toBe('panel');
    expect(document.board.appearance).toBeUndefined();
  });

  it('that takes away the last covering leaves a bare wall, not an unknown one', () => {
    expect(after('remove:wall.coverings.0').document.wall?.coverings).toEqual([]);
  });
});

describe('a choice that brings new fields', () => {
  const document = (query: string) =>
    checkInPlace(textsOf(query)).reading.document as unknown as typeof shelf;

  it('brings sizes to be changed', () => {
    expect(document('board.nosing.by=given').board.nosing).toEqual({
      height: '1-1/2 in',
      thickness: '3/4 in',
      flush: 'top',
    });
    expect(document('units=metric&wall.by=given&wall.studs.by=first').wall?.studs).toEqual({
      first: '0 mm',
      spacing: '400 mm',
    });
  });

  it('brings no rating: that is for the maker to say', () => {
    const { brackets } = document('brackets.capacity.basis=rated');
    expect(brackets.capacity).toEqual({ basis: 'rated' });
  });

  it('turns a load into another kind with an amount that kind takes, and leaves a mistyped amount alone', () => {
    const turned = document('loads.0.kind=point&loads.0.was=line&loads.0.amount=20+lbf/ft');
    expect(turned.loads).toEqual([{ kind: 'point', amount: '20 lbf', at: '12 in' }]);
    const inAll = document('loads.0.kind=point&loads.0.was=line&loads.0.by=total&loads.0.total=60+lb');
    expect(inAll.loads).toEqual([
      expect.objectContaining({ kind: 'point', amount: expect.stringMatching(/lbf$/) as string }),
    ]);
    expect(inAll.loads?.[0]).not.toHaveProperty('total');
    const mistyped = document('loads.0.kind=line&loads.0.was=line&loads.0.amount=20+lbf');
    expect(mistyped.loads).toEqual([{ kind: 'line', amount: '20 lbf' }]);
  });

  // By hand: 12 × 5 lb = 60 lb; 20 lbf/ft × 8 ft = 160 lbf, × 3 ft = 60 lbf; 60/8 = 7.5; 10/7 = 1.42857…, 1.429 so that it is no less.
  it.each([
    ['total', 'things.0.thing=dinner-plate&things.0.count=12&things.0.each=5+lb', '60 lbf'],
    ['total', 'amount=20+lbf/ft', '160 lbf'],
    ['total', 'amount=20', '160 lbf'],
    ['total', 'amount=20+lbf/ft&from=2+ft&to=5+ft', '60 lbf'],
    ['amount', 'total=60+lb', '7.5 lbf/ft'],
    ['amount', 'total=10+lb&to=7+ft', '1.429 lbf/ft'],
    ['amount', 'things.0.thing=dinner-plate&things.0.count=12&things.0.each=5+lb', '7.5 lbf/ft'],
  ])('carries a weight over to another way of giving it, %s: %s', (by, given, expected) => {
    const fields = given.split('&').map((field) => `loads.0.${field}`);
    const query = ['board.length=96+in', 'loads.0.kind=line', `loads.0.by=${by}`, ...fields].join('&');
    expect(document(query).loads).toEqual([expect.objectContaining({ [by]: expected })]);
  });

  it('carries the weight of a single thing as it is, in the units of the form', () => {
    const things = 'loads.0.things.0.thing=dinner-plate&loads.0.things.0.count=2&loads.0.things.0.each=10+kg';
    const carried = document(`units=metric&loads.0.kind=point&loads.0.at=1+m&loads.0.by=amount&${things}`);
    // 2 × 10 kg × 9.80665 m/s² = 196.133 N, rounded up.
    expect(carried.loads).toEqual([{ kind: 'point', amount: '196.2 N', at: '1 m' }]);
  });

  it('carries from the way it was given last, whatever is left of others, and keeps words that come to the same', () => {
    const sent = (was: string, by: string, total: string) =>
      document(
        `board.length=7+ft&loads.0.kind=line&loads.0.by.was=${was}&loads.0.by=${by}&loads.0.total=${total}&loads.0.amount=20+lbf/ft&loads.0.things.0.thing=dinner-plate&loads.0.things.0.count=2`,
      ).loads;
    expect(sent('amount', 'total', '10+lb')).toEqual([{ kind: 'line', total: '140 lbf' }]);
    expect(sent('total', 'amount', '70+lb')).toEqual([{ kind: 'line', amount: '10 lbf/ft' }]);
    expect(sent('amount', 'total', '140+lb')).toEqual([{ kind: 'line', total: '140 lb' }]);
    expect(sent('total', 'total', '10+lb')).toEqual([{ kind: 'line', total: '10 lb' }]);
  });

  it('carries nothing over what is written, from what can not be read, nor over an unknown length', () => {
    const line = 'loads.0.kind=line&loads.0.by=total';
    const [written] = document(`board.length=8+ft&${line}&loads.0.amount=20&loads.0.total=5+lb`).loads ?? [];
    expect(written).toMatchObject({ total: '5 lb' });
    for (const query of [
      `board.length=8+ft&${line}&loads.0.amount=many`,
      `board.length=long&${line}&loads.0.amount=20`,
      `board.length=8+ft&${line}&loads.0.amount=20&loads.0.from=9+ft`,
      `board.length=8+ft&${line}&loads.0.things.0.thing=no-such-thing&loads.0.things.0.count=2`,
      `board.length=8+ft&${line}`,
    ])
      expect(document(query).loads?.[0], query).not.toHaveProperty('total');
  });

  it('takes away what another choice leaves idle', () => {
    const { brackets } = document(
      'brackets.capacity.basis=rated&brackets.capacity.by=test&brackets.capacity.allowable=150+lbf&brackets.capacity.ultimate=600+lbf&brackets.capacity.factor=4',
    );
    expect(brackets.capacity).toEqual({ basis: 'rated', ultimate: '600 lbf', factor: 4 });
  });
});
