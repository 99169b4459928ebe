import { randomBytes, randomInt, scrypt, timingSafeEqual, type ScryptOptions } from 'node:crypto';

/**
 * scrypt (RFC 7914) at 32 MiB and three rounds: among the settings that the OWASP password storage cheat sheet gives as its
 * least (from memory).
 */
const settings = { cost: 2 ** 15, blockSize: 8, parallelization: 3 } as const;
const longestKey = 64;
const mostMemory = 256 * 1024 * 1024;

/** What is kept of a password: `scrypt$N$r$p$salt$key`, so that the settings can be raised later. */
export async function hashPassword(password: string): Promise<string> {
  const salt = randomBytes(16);
  const key = await derive(password, salt, longestKey, settings);
  const { cost, blockSize, parallelization } = settings;
  return ['scrypt', cost, blockSize, parallelization, salt.toString('base64'), key.toString('base64')].join(
    '$',
  );
}

/** Whether a password is the one that something was kept of. It takes as long when nothing was: `kept` is undefined then. */
export async function isPassword(password: string, kept: string | undefined): Promise<boolean> {
  const [, cost, blockSize, parallelization, salt = '', key = ''] = (kept ?? nobodys).split('$');
  const expected = Buffer.from(key, 'base64');
  const given = await derive(password, Buffer.from(salt, 'base64'), expected.length, {
    cost: Number(cost),
    blockSize: Number(blockSize),
    parallelization: Number(parallelization),
  });
  return timingSafeEqual(given, expected) && kept !== undefined;
}

/** Has the form of a kept password, and is none. */
const nobodys = [
  'scrypt',
  settings.cost,
  settings.blockSize,
  settings.parallelization,
  Buffer.alloc(16).toString('base64'),
  Buffer.alloc(longestKey).toString('base64'),
].join('$');

const shortest = 12;
const longest = 200;

/** What is wrong with a password somebody chose; empty for nothing. */
export function passwordFault(password: string, signInName: string): string {
  const length = [...password].length;
  if (length < shortest) return `It takes at least ${shortest} characters. A few words in a row do well.`;
  if (length > longest) return `It takes at most ${longest} characters.`;
  if (new Set(password).size < 5) return 'It takes at least five different characters.';
  if (password.toLowerCase().includes(signInName.toLowerCase())) return 'It can’t hold the sign-in name.';
  return '';
}

/** Letters and figures that are not taken for one another. */
const alphabet = 'abcdefghjkmnpqrstuvwxyz23456789';

/** A password by chance, of about 99 bits, to be read out or copied: `x7kq-…`. */
export function newPassword(): string {
  const group = (): string => Array.from({ length: 4 }, () => alphabet[randomInt(alphabet.length)]).join('');
  return Array.from({ length: 5 }, group).join('-');
}

/** The same password however its letters were typed (RFC 8265 asks for NFC). */
function derive(password: string, salt: Buffer, length: number, options: ScryptOptions): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(password.normalize('NFC'), salt, length, { ...options, maxmem: mostMemory }, (error, key) => {
      if (error === null) resolve(key);
      else reject(error);
    });
  });
}
