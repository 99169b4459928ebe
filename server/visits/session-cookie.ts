import type { CookieOptions, Request, Response } from 'express';
import { longestSession_ms } from '../store/sessions.ts';

/** Where people reach the program. */
export interface Site {
  /** As a browser says it: `https://shelves.example`. */
  readonly origin: string;
  /** Whether people reach it by https. */
  readonly isSecure: boolean;
}

/** The prefix makes a browser refuse the cookie from another name, by plain http or for a part of the site. */
function nameOf({ isSecure }: Site): string {
  return isSecure ? '__Host-session' : 'session';
}

function optionsOf({ isSecure }: Site): CookieOptions {
  return { httpOnly: true, sameSite: 'lax', secure: isSecure, path: '/' };
}

/** The key of the session that a request comes with; empty for none. */
export function sessionKey(request: Request, site: Site): string {
  const start = `${nameOf(site)}=`;
  const cookies = (request.get('cookie') ?? '').split(';').map((each) => each.trim());
  return cookies.find((each) => each.startsWith(start))?.slice(start.length, start.length + 100) ?? '';
}

/** Gives a browser the key of its session. */
export function giveKey(response: Response, site: Site, key: string): void {
  response.cookie(nameOf(site), key, { ...optionsOf(site), maxAge: longestSession_ms });
}

/** Takes the key of a session from a browser. */
export function takeKey(response: Response, site: Site): void {
  response.clearCookie(nameOf(site), optionsOf(site));
}
