import { fingerprintLength } from '../sheets/fingerprint.ts';

/** What came of reading a fingerprint that somebody typed in or pasted. */
export type TypedFingerprint =
  { readonly ok: true; readonly fingerprint: string } | { readonly ok: false; readonly message: string };

const shortMark = 12;

/** Reads a typed fingerprint; spaces, line breaks, capitals and the word before it do not count. */
export function readFingerprint(typed: string): TypedFingerprint {
  const digits = typed
    .toLowerCase()
    .replace(/^\s*fingerprint:?/, '')
    .replace(/\s+/gu, '');
  const strange = /[^0-9a-f]/u.exec(digits)?.[0];
  if (strange !== undefined) {
    return refuse(`It takes the figures 0 to 9 and the letters a to f alone; there is “${strange}” in it.`);
  }
  if (digits.length === fingerprintLength) return { ok: true, fingerprint: digits };
  if (digits === '') return refuse(`It takes the ${fingerprintLength} digits from the foot of the sheet.`);
  const short =
    digits.length === shortMark ? ' Twelve digits are the mark of a sheet that was not issued.' : '';
  return refuse(
    `It takes ${fingerprintLength} digits, in whatever groups; here ${digits.length === 1 ? 'is 1' : `are ${digits.length}`}.${short}`,
  );
}

function refuse(message: string): TypedFingerprint {
  return { ok: false, message };
}
