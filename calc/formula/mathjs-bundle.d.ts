declare module 'mathjs/lib/browser/math.js' {
  import type * as all from 'mathjs';
  const mathjs: typeof all;
  export default mathjs;
}
