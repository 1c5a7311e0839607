import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const below = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name));

const slug = /^[a-z]+(-[a-z0-9]+)+$/;
/** Where texts of findings live; a room may name further files of them `…-texts.ts`. */
const textFiles = below('src').filter((path) => /(?:^|[/\\])(?:[a-z]+-)?texts(?:-[a-z]+)?\.ts$/.test(path));

interface Coded {
  readonly code: string;
  readonly where: string;
  /** Texts that are written as nothing. */
  readonly empty: number;
}

/** Codes as they are written: the first word of a call that makes a finding, the head of a row, or `code:` in an object. */
function codesOf(path: string): Coded[] {
  const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: Coded[] = [];
  const where = (node: ts.Node): string => `${path}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
  const isEmpty = (node: ts.Node): boolean => ts.isStringLiteralLike(node) && node.text.trim() === '';
  const keep = (head: ts.Expression | undefined, rest: readonly ts.Expression[]): void => {
    if (head === undefined) return;
    for (const code of literals(head)) found.push({ code, where: where(head), empty: rest.filter(isEmpty).length });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && node.arguments.length >= 3)
      keep(node.arguments[0], node.arguments.slice(1));
    if (
      ts.isArrayLiteralExpression(node) &&
      node.elements.length === 3 &&
      /refusals/.test(node.parent.parent.parent.getText().slice(0, 30))
    )
      keep(node.elements[0], node.elements.slice(2));
    if (ts.isObjectLiteralExpression(node)) {
      const of = (name: string) =>
        node.properties.filter(ts.isPropertyAssignment).find((p) => p.name.getText() === name)?.initializer;
      const texts = ['says', 'why', 'write'].map(of).filter((x) => x !== undefined);
      if (texts.length > 0) keep(of('code'), texts);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** A code may be one of two: `bad ? 'unit-unknown' : 'unit-missing'`. */
const literals = (node: ts.Expression): string[] =>
  ts.isConditionalExpression(node)
    ? [...literals(node.whenTrue), ...literals(node.whenFalse)]
    : ts.isStringLiteralLike(node) && slug.test(node.text)
      ? [node.text]
      : [];

const coded = textFiles.flatMap(codesOf);
const tests = below('test')
  .filter((path) => path.endsWith('.ts') && !path.includes('findings.test'))
  .map((path) => readFileSync(path, 'utf8'))
  .join('\n');

describe('every finding that the tool can make', () => {
  it('stands in a file of texts, in all rooms that read or reduce', () => {
    expect(new Set(textFiles.map((path) => path.split(/[/\\]/)[1]))).toEqual(
      new Set(['physics', 'quantity', 'statistics', 'notes', 'logs', 'derive', 'compare', 'report', 'host']),
    );
    expect(new Set(coded.map((c) => c.code)).size).toBeGreaterThan(100);
  });

  it('says what is there, why it will not do and what to write: none of them is left empty', () => {
    expect(coded.filter((c) => c.empty > 0)).toEqual([]);
  });

  it('is asked for by some test', () => {
    const asked = new Set(tests.match(/[a-z]+(?:-[a-z0-9]+)+/g));
    const never = [...new Set(coded.map((c) => c.code))].filter((code) => !asked.has(code));
    expect(never).toEqual([]);
  });
});
