/**
 * The floors of the house: imports only go down.
 * shared → calc/formula → calc/catalogue, calc/standards, calc/mechanics → calc/codes → calc/elements → calc/layout
 * → calc/index.ts → server
 */
const floor = (name, from, to, comment) => ({
  name,
  comment,
  severity: 'error',
  from: { path: from },
  to: { path: to },
});

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    floor(
      'shared-stands-alone',
      '^shared/',
      '^(calc|server|views|test)/',
      'shared/ imports nothing else of ours.',
    ),
    floor('calc-is-pure', '^calc/', '^(server|views|test)/', 'calc/ imports only calc/ and shared/.'),
    floor('no-test-in-the-product', '^(calc|server|shared)/', '^test/', 'The product never needs its tests.'),
    floor(
      'formula-at-the-bottom',
      '^calc/formula/',
      '^calc/(?!formula/)',
      'The formula engine knows no table, clause or element.',
    ),
    floor(
      'catalogue-knows-no-code',
      '^calc/catalogue/',
      '^calc/(standards|mechanics|codes|elements|layout|index)',
      'Tables are read without knowing what they are for.',
    ),
    floor(
      'mechanics-knows-no-code-of-practice',
      '^calc/mechanics/',
      '^calc/(standards|codes|elements|layout|index)',
      'Statics and geometry hold under any code.',
    ),
    floor(
      'standards-know-no-element',
      '^calc/standards/',
      '^calc/(mechanics|codes|elements|layout|index)',
      'A clause does not know what it is applied to.',
    ),
    floor(
      'codes-know-no-element',
      '^calc/codes/',
      '^calc/(elements|layout|index)',
      'A code serves every element.',
    ),
    floor(
      'elements-below-layout',
      '^calc/elements/',
      '^calc/(layout|index)',
      'The search stands on the elements.',
    ),
    floor('layout-below-the-door', '^calc/layout/', '^calc/index', 'The door is the top of calc/.'),
    {
      name: 'calc-reads-nothing',
      comment: 'calc/ reads no file but its own tables, and no network.',
      severity: 'error',
      from: { path: '^calc/', pathNot: '^calc/catalogue/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'tables-are-files',
      comment: 'The catalogue reads its tables, and reaches for nothing else of the machine.',
      severity: 'error',
      from: { path: '^calc/catalogue/' },
      to: { dependencyTypes: ['core'], pathNot: '^(node:)?(fs|path|url)$' },
    },
    {
      name: 'calc-and-shared-libraries',
      comment: 'Arithmetic and schemas are all that calc/ and shared/ take from others.',
      severity: 'error',
      from: { path: '^(calc|shared)/' },
      to: { path: 'node_modules', pathNot: 'node_modules/(mathjs|zod)/' },
    },
    {
      name: 'nothing-is-worked-out-where-requests-are-answered',
      comment: 'It is asked of the study, whose threads do it; else everybody waits meanwhile.',
      severity: 'error',
      from: { path: '^server/', pathNot: '^server/(check/(findings|in-place)\\.ts|command-line/)' },
      to: { path: '^calc/index' },
    },
    {
      name: 'in-place-in-threads-alone',
      comment: 'What checks in place is for threads, where nobody else waits.',
      severity: 'error',
      from: {
        path: '^server/',
        pathNot: '^server/(papers/draft|pages/page-orders|check/(study|(study|quick)-worker))\\.ts$',
      },
      to: {
        path: '^server/check/(findings|in-place)\\.ts$',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'pages-of-checks-in-threads-alone',
      comment: 'What draws, typesets and fills in a check takes long enough for others to wait.',
      severity: 'error',
      from: {
        path: '^server/',
        pathNot: '^server/(pages/|view-models/|papers/|sheets/pdf/|check/quick-worker)',
      },
      to: {
        path: '^server/(pages/page-orders|view-models/(answer|check-page|installer|sheet))\\.ts$',
        dependencyTypesNot: ['type-only'],
      },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'resolvable',
      severity: 'error',
      from: { path: '^(calc|server|shared|test)/' },
      to: { couldNotResolve: true },
    },
    {
      name: 'no-dev-tool-in-the-product',
      severity: 'error',
      from: { path: '^(calc|server|shared)/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg'], dependencyTypesNot: ['type-only'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default'] },
  },
};
