/** What is wrong with a sign-in name; empty for nothing. An e-mail address is one, and so is a plain word. */
export function signInNameFault(name: string): string {
  return /^[\p{L}\p{N}][\p{L}\p{N}.@_+-]{2,119}$/u.test(name)
    ? ''
    : 'It takes 3 to 120 letters, figures, dots, hyphens and @, such as an e-mail address.';
}

/** What is wrong with a person's or an office's name; empty for nothing. */
export function nameFault(name: string): string {
  return /^(?=.*\S)\P{Cc}{1,80}$/u.test(name) ? '' : 'It takes a name of at most 80 characters.';
}
