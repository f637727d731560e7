import type { Node, Program, RegExpLiteral, VariableDeclarator } from 'estree';
import { walk } from 'estree-walker';
import MagicString from 'magic-string';
import type { Plugin } from 'vite';

/**
 * Makes patterns with classes of Unicode letters (`\p{L}`) only when they are first used. A browser checks every pattern
 * while it reads a script, again when the pattern is made, and once more when it is used. Each such class has hundreds of
 * ranges. The patterns of the page's script took a slow laptop 60 ms, most of them for letters that a page does not have.
 */
export function makePatternsLate(folder: string): Plugin {
  return {
    name: 'make-patterns-late',
    transform(code, id) {
      if (!id.startsWith(folder) || !/\\[pP]\{/.test(code)) return undefined;
      const late = withLatePatterns(code, this.parse(code) as Node);
      return { code: late.toString(), map: late.generateMap({ hires: true }) };
    },
  };
}

/**
 * Returns the code of a module with late patterns. `const WORD = /\p{L}+/u` at the top of a module becomes a variable that
 * is set where it is first read. A pattern inside a function is kept for the next call. A pattern stays as it is if it is
 * exported, or if it is global and `exec` or `test` of it goes on from the last place.
 */
export function withLatePatterns(code: string, module: Node): MagicString {
  const late = new MagicString(code);
  const named = namedPatterns(module as Program);
  const inner: string[] = [];
  const parents: Node[] = [];
  walk(module, {
    enter(node, parent) {
      if (parent) parents.push(parent);
      const { start, end } = placeOf(node);
      if (node.type === 'VariableDeclaration' && node.declarations.some((one) => patternIn(one, named)))
        late.overwrite(start, start + node.kind.length, 'let');
      else if (node.type === 'VariableDeclarator' && patternIn(node, named)) {
        late.remove(placeOf(node.id).end, end);
        this.skip();
        parents.pop();
      } else if (node.type === 'Identifier' && named.has(node.name) && isReference(node, parent!))
        late.overwrite(start, end, `(${node.name} ??= ${named.get(node.name)})`);
      else if (isLetterPattern(node) && parents.some(isFunction) && keepsNoPlace(node, parent!)) {
        const name = `late$${inner.length}`;
        inner.push(name);
        late.overwrite(start, end, `(${name} ??= ${makerOf(node)})`);
      }
    },
    leave(_node, parent) {
      if (parent) parents.pop();
    },
  });
  if (inner.length > 0) late.prepend(`let ${inner.join(', ')};\n`);
  return late;
}

/** Names that no other variable of a module has. */
const CONSTANT = /^[A-Z_\d]+$/;

/** Returns the patterns in constants at the top of a module, by their names, as code that makes them. */
function namedPatterns({ body }: Program): Map<string, string> {
  const named = new Map<string, string>();
  for (const statement of body)
    if (statement.type === 'VariableDeclaration' && statement.kind === 'const')
      for (const { id, init } of statement.declarations)
        if (id.type === 'Identifier' && CONSTANT.test(id.name) && init && isLetterPattern(init))
          named.set(id.name, makerOf(init));
  return named;
}

function patternIn({ id }: VariableDeclarator, named: ReadonlyMap<string, string>): boolean {
  return id.type === 'Identifier' && named.has(id.name);
}

function isLetterPattern(node: Node): node is RegExpLiteral {
  return node.type === 'Literal' && 'regex' in node && /\\[pP]\{/.test(node.regex.pattern);
}

function makerOf({ regex: { pattern, flags } }: RegExpLiteral): string {
  return `new RegExp(${JSON.stringify(pattern)}, ${JSON.stringify(flags)})`;
}

function isFunction({ type }: Node): boolean {
  return /Function/.test(type);
}

/** Returns false for the name of a property: `shown` in `line.shown`. */
function isReference(node: Node, parent: Node): boolean {
  if (parent.type === 'MemberExpression') return parent.computed || parent.property !== node;
  return !('key' in parent) || parent.key !== node || ('computed' in parent && parent.computed);
}

function keepsNoPlace(node: RegExpLiteral, parent: Node): boolean {
  if (!/[gy]/.test(node.regex.flags)) return true;
  if (parent.type !== 'CallExpression' || parent.callee.type !== 'MemberExpression') return false;
  const { property } = parent.callee;
  return (
    property.type === 'Identifier' && /^(?:match|matchAll|replace|replaceAll|split)$/.test(property.name)
  );
}

function placeOf(node: Node): { start: number; end: number } {
  return node as Node & { start: number; end: number };
}
