import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';

/** What is absent by rule, where the linter and the dependency rules can't see it. */

const project = join(import.meta.dirname, '..');
const read = (file: string): string => readFileSync(join(project, file), 'utf8');

function files(folder: string, ending: string): string[] {
  const found = readdirSync(join(project, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending))
    .map((file) => `${folder}/${file}`)
    .sort();
  if (found.length === 0) throw new Error(`${folder}/ has no ${ending}: the rule would hold of nothing.`);
  return found;
}

function nodesOf(file: string): ts.Node[] {
  const source = ts.createSourceFile(file, read(file), ts.ScriptTarget.Latest, true);
  const nodes: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    nodes.push(node);
    node.forEachChild(visit);
  };
  visit(source);
  return nodes;
}

/** Names that stand for themselves: not after a point, not the name of a field, not declared as a type of ours. */
function freeNames(file: string): Set<string> {
  const names = nodesOf(file)
    .filter(ts.isIdentifier)
    .filter((node) => {
      const { parent } = node;
      if (ts.isPropertyAccessExpression(parent) || ts.isPropertyAssignment(parent))
        return parent.name !== node;
      return !ts.isPropertySignature(parent) && !ts.isPropertyDeclaration(parent);
    });
  return new Set(names.map(({ text }) => text));
}

function members(file: string): Set<string> {
  return new Set(
    nodesOf(file)
      .filter(ts.isPropertyAccessExpression)
      .map((node) => node.name.text),
  );
}

describe('calc/ and shared/', () => {
  const pure = [...files('calc', '.ts'), ...files('shared', '.ts')];
  const clock = ['Date', 'performance', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask'];
  const outside = [
    'process',
    'fetch',
    'XMLHttpRequest',
    'WebSocket',
    'console',
    'globalThis',
    'require',
    'crypto',
    'Deno',
  ];

  it.each(pure)('%s reads no clock, environment, network or chance', (file) => {
    const names = freeNames(file);
    expect([...clock, ...outside].filter((name) => names.has(name))).toEqual([]);
    expect(members(file).has('random')).toBe(false);
  });

  it.each(pure)('%s keeps no state between calls', (file) => {
    const source = ts.createSourceFile(file, read(file), ts.ScriptTarget.Latest, true);
    const changing = source.statements
      .filter(ts.isVariableStatement)
      .filter(({ declarationList }) => (declarationList.flags & ts.NodeFlags.Const) === 0);
    expect(changing.map((statement) => statement.getText())).toEqual([]);
  });

  it('turn no number into words but in shared/quantity', () => {
    const wording = new Set(['toFixed', 'toPrecision', 'toExponential', 'toLocaleString']);
    const others = pure.filter((file) => !file.startsWith('shared/quantity/'));
    const found = others.flatMap((file) =>
      nodesOf(file)
        .filter(ts.isCallExpression)
        .filter(
          ({ expression }) => ts.isPropertyAccessExpression(expression) && wording.has(expression.name.text),
        )
        // Number(x.toPrecision(15)) rounds: what comes out is a number.
        .filter(({ parent }) => !(ts.isCallExpression(parent) && parent.expression.getText() === 'Number'))
        .map((call) => `${file}: ${call.getText()}`),
    );
    expect(found).toEqual([]);
  });

  it('read files in calc/catalogue alone', () => {
    const readers = pure.filter((file) => /from '(?:node:)?fs/.test(read(file)));
    expect(readers.filter((file) => !file.startsWith('calc/catalogue/'))).toEqual([]);
  });
});

describe('templates', () => {
  it.each(files('views', '.hbs'))('%s holds no style, script or handler of its own', (file) => {
    const text = read(file);
    expect(text).not.toMatch(/<style|\sstyle\s*=|\son[a-z]+\s*=|javascript:|hx-on|hx-vals\s*=\s*["']js:/i);
    for (const script of text.match(/<script\b[^>]*>[^<]*/gi) ?? []) {
      expect(script).toMatch(/\ssrc=/);
      expect(script.replace(/^<script\b[^>]*>/i, '').trim()).toBe('');
    }
  });
});

describe('packages', () => {
  const versions = z.record(z.string(), z.string());
  const manifest = z
    .object({ dependencies: versions, devDependencies: versions })
    .parse(JSON.parse(read('package.json')));

  it.each(Object.entries({ ...manifest.dependencies, ...manifest.devDependencies }))(
    '%s %s is one version',
    (_name, version) => {
      expect(version).toMatch(/^\d+\.\d+\.\d+$/);
    },
  );

  it('are locked by their content and by no host', () => {
    const lock = z
      .object({
        packages: z.record(
          z.string(),
          z.object({ integrity: z.string().optional(), resolved: z.string().optional() }),
        ),
      })
      .parse(JSON.parse(read('package-lock.json')));
    const others = Object.entries(lock.packages).filter(([name]) => name !== '');
    expect(others.length).toBeGreaterThan(100);
    expect(others.filter(([, { integrity }]) => integrity === undefined).map(([name]) => name)).toEqual([]);
    expect(others.flatMap(([, { resolved }]) => resolved ?? [])).toEqual([]);
  });
});
