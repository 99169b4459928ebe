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

  it('takes away what another choice leaves idle', () => {
    const { brackets } = document(
      'brackets.capacity.basis=rated&brackets.capacity.by=test&brackets.capacity.allowable=150+lbf&brackets.capacity.ultimate=600+lbf&brackets.capacity.factor=4',
    );
    expect(brackets.capacity).toEqual({ basis: 'rated', ultimate: '600 lbf', factor: 4 });
  });
});
