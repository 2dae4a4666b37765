import ts from "typescript";

const COLUMNS = 120;

/** Literals cannot be broken without making them worse to read and to search. */
const isLiteral = ({ kind }: ts.Node): boolean =>
  kind === ts.SyntaxKind.StringLiteral ||
  kind === ts.SyntaxKind.RegularExpressionLiteral ||
  kind === ts.SyntaxKind.NoSubstitutionTemplateLiteral ||
  kind === ts.SyntaxKind.TemplateExpression;

/** From and to of every literal of a script. */
function literalsOf(file: string, text: string): [number, number][] {
  const literals: [number, number][] = [];
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest);
  const visit = (node: ts.Node): void => {
    if (isLiteral(node)) literals.push([node.getStart(source), node.getEnd()]);
    else ts.forEachChild(node, visit);
  };
  visit(source);
  return literals;
}

/** Quoted text of a page's template, where a script's grammar does not hold. */
const quotedIn = (text: string): [number, number][] =>
  [...text.matchAll(/"[^"\n]*"|`[^`]*`/g)].map(({ 0: quoted, index }) => [index, index + quoted.length]);

/** What cannot be broken in a file: from and to of each. */
function unbreakable(file: string, text: string): [number, number][] {
  if (/\.m?ts$|\.mjs$/.test(file)) return literalsOf(file, text);
  return file.endsWith(".astro") ? quotedIn(text) : [];
}

/** `file:line: text` of each line of 120 columns or more that is wide by more than a literal in it. */
export function longLines(file: string, text: string): string[] {
  const lines = text.split("\n");
  if (lines.every(({ length }) => length < COLUMNS)) return [];
  const literals = unbreakable(file, text);
  let start = 0;
  return lines.flatMap((line, i) => {
    const from = start;
    const to = from + line.length;
    start = to + 1;
    if (line.length < COLUMNS) return [];
    const held = literals.reduce((sum, [a, b]) => sum + Math.max(0, Math.min(b, to) - Math.max(a, from)), 0);
    if (line.length - held < COLUMNS && held > 0) return [];
    if (file.endsWith(".css") && /^\s*(?:src: url\(|unicode-range: )/.test(line)) return [];
    return [`${file}:${i + 1}: ${line.trim().slice(0, 100)}`];
  });
}
