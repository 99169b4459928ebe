/**
 * The bytes of one file of a form (RFC 7578); of a body of any other type, the body itself.
 *
 * @param body what was sent
 * @param contentType the header that says what it is
 * @param name the name of the form's field
 * @returns the bytes of the file; none where the form has no such file
 */
export function fileOf(body: Uint8Array, contentType: string, name: string): Uint8Array {
  if (!/^multipart\/form-data\b/i.test(contentType)) return body;
  const [, quoted, plain] = /boundary=(?:"([^"]{1,70})"|([^\s;]{1,70}))/i.exec(contentType) ?? [];
  const boundary = quoted ?? plain;
  if (boundary === undefined) return new Uint8Array();
  const bytes = Buffer.from(body);
  const mark = Buffer.from(`--${boundary}`);
  let start = bytes.indexOf(mark);
  while (start >= 0) {
    const headAt = start + mark.length + 2;
    const headEnd = bytes.indexOf('\r\n\r\n', headAt);
    const end = bytes.indexOf(mark, headAt);
    if (headEnd < 0 || end < headEnd) return new Uint8Array();
    const head = bytes.toString('latin1', headAt, headEnd);
    if (head.includes(`name="${name}"`)) return new Uint8Array(bytes.subarray(headEnd + 4, end - 2));
    start = end;
  }
  return new Uint8Array();
}
