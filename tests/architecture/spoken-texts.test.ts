/** Every text a person reads is in src/words: none stands in a component, where no language could replace it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../../src');
const SPOKEN = new Set([
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'title',
  'placeholder',
  'alt',
  'label',
]);
/** Letters that say something: neither an entity nor the beginning of an address. */
const hasWord = (text: string): boolean => /\p{L}{2,}/u.test(text.replace(/&\w+;|https?:\/\//g, ''));

/** Words written into a component's markup, as `file:line text`. */
export function spokenTexts(file: string, text: string): readonly string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const report = (node: ts.Node, words: string): void => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${file}:${line + 1} ${words.trim()}`);
  };
  const visit = (node: ts.Node): void => {
    // What is typed into a terminal is the same in every language.
    if (ts.isJsxText(node) && hasWord(node.text)) {
      const typed = ts.isJsxElement(node.parent) && node.parent.openingElement.tagName.getText() === 'code';
      if (!typed) report(node, node.text);
    }
    if (ts.isJsxExpression(node) && node.expression !== undefined && !ts.isJsxAttribute(node.parent))
      for (const words of literals(node.expression)) if (hasWord(words.text)) report(words, words.text);
    if (ts.isJsxAttribute(node) && SPOKEN.has(node.name.getText()) && node.initializer !== undefined) {
      const { initializer } = node;
      const inner = ts.isJsxExpression(initializer) ? initializer.expression : initializer;
      for (const words of inner === undefined ? [] : literals(inner))
        if (hasWord(words.text)) report(words, words.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** The texts that an expression may turn into by itself; keys handed to a function are no texts. */
function literals(node: ts.Expression): readonly (ts.StringLiteral | ts.NoSubstitutionTemplateLiteral)[] {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return [node];
  if (ts.isParenthesizedExpression(node)) return literals(node.expression);
  if (ts.isConditionalExpression(node)) return [...literals(node.whenTrue), ...literals(node.whenFalse)];
  if (ts.isBinaryExpression(node))
    return [...literals(node.left), ...literals(node.right)].filter(
      () =>
        node.operatorToken.kind === ts.SyntaxKind.PlusToken ||
        node.operatorToken.kind === ts.SyntaxKind.BarBarToken ||
        node.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken,
    );
  return [];
}

it('sees a text in markup, in an attribute and in a choice, and lets keys be', () => {
  const sample = `
    const A = () => <p title="Stop here">Go on {done ? 'Ready now' : ''} {t('app.name')}</p>;
    const B = () => <p className="big box">{t(\`a.\${b}\`)} · 12 {kind === 'round' && <i />}</p>;
  `;
  expect(spokenTexts('a.tsx', sample)).toEqual(['a.tsx:2 Stop here', 'a.tsx:2 Go on', 'a.tsx:2 Ready now']);
});

it('finds none in the app', () => {
  const found: string[] = [];
  for (const folder of ['view', 'app'])
    for (const name of readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }))
      if (name.endsWith('.tsx'))
        found.push(...spokenTexts(`src/${folder}/${name}`, readFileSync(join(root, folder, name), 'utf8')));
  expect(found).toEqual([]);
});
