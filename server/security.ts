import helmet from 'helmet';
import type { RequestHandler } from 'express';

const yearInSeconds = 31_536_000;

/**
 * The headers that keep a page to itself: nothing but its own files runs or loads, and nobody frames it. A browser is asked
 * to insist on https where people reach the program so, and not on the machine it runs on.
 *
 * @param isSecure whether people reach it by https
 */
export function securityHeaders(isSecure: boolean): RequestHandler {
  return helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", 'data:'],
        fontSrc: ["'self'"],
        connectSrc: ["'self'"],
        formAction: ["'self'"],
        baseUri: ["'none'"],
        frameAncestors: ["'none'"],
      },
    },
    // With no referrer at all, a browser would not say either that our own forms come from us.
    referrerPolicy: { policy: 'same-origin' },
    strictTransportSecurity: isSecure && { maxAge: yearInSeconds, includeSubDomains: false },
  });
}
