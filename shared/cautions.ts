/** The cautions, each by what it is about. */
export const caution = {
  aid: 'This is a calculation aid. Local codes and the authority having jurisdiction come first, and a licensed professional decides where one is required.',
  derived:
    'Values for appearance boards are derived from tests of clear wood by a stated method. They are not a grade stamp.',
  find: 'Find studs, wires and pipes before drilling.',
  onIt: 'Nobody stands or sits on a shelf. Children climb: fasten and limit accordingly. A thing dropped or jerked counts at least double.',
  professional:
    'Ask a professional for seismic regions (and retain what is displayed), outdoors and wet places, steam over a range, glass, aquariums, and anything a person sleeps or sits under or hangs from.',
} as const;

/** What stands near every verdict: on screen, in print and on the command line. */
export const cautions: readonly string[] = Object.freeze(Object.values(caution));
