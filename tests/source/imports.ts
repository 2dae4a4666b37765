/** What files of `src/` import, and what DEVELOPERS.md allows each folder to. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import ts from "typescript";

export interface Import {
  readonly from: string;
  /** As written: a path or a package. */
  readonly what: string;
  readonly line: number;
  readonly typesOnly: boolean;
  /** It takes nothing: a page starts a script. */
  readonly starts: boolean;
}

export interface Allowed {
  readonly values: ReadonlySet<string>;
  readonly types: ReadonlySet<string>;
  readonly scripts: ReadonlySet<string>;
}

/** Every file of a folder that holds code, with its folder's name before it. */
export const sourceFiles = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(ts|mjs|astro)$/.test(name))
    .map((name) => join(folder, name))
    .sort();

/** The scripts of an Astro page, each line where it stood. */
function scriptsOf(page: string): string {
  let inside = false;
  return page
    .split("\n")
    .map((line, i) => {
      if (/^\s*<\/script>/.test(line) || (line === "---" && i > 0)) {
        inside = false;
        return "";
      }
      const kept = inside ? line : "";
      if (/<script[^>]*>\s*$/.test(line) || (line === "---" && i === 0)) inside = true;
      return kept;
    })
    .join("\n");
}

export function importsOf(file: string, text: string): Import[] {
  const source = ts.createSourceFile(
    file,
    file.endsWith(".astro") ? scriptsOf(text) : text,
    ts.ScriptTarget.ESNext,
    true,
    ts.ScriptKind.TS,
  );
  const found: Import[] = [];
  const add = (node: ts.Node, what: ts.Node | undefined, typesOnly: boolean, starts = false): void => {
    if (what === undefined || !ts.isStringLiteralLike(what)) return;
    found.push({
      from: file,
      what: what.text,
      line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1,
      typesOnly,
      starts,
    });
  };
  const allTypes = (named: ts.NamedImportBindings | ts.NamedExportBindings | undefined): boolean =>
    named !== undefined &&
    (ts.isNamedImports(named) || ts.isNamedExports(named)) &&
    named.elements.length > 0 &&
    (named.elements as ts.NodeArray<ts.ImportSpecifier | ts.ExportSpecifier>).every(({ isTypeOnly }) => isTypeOnly);
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) {
      const clause = node.importClause;
      const only =
        clause !== undefined &&
        (clause.phaseModifier === ts.SyntaxKind.TypeKeyword ||
          (clause.name === undefined && allTypes(clause.namedBindings)));
      add(node, node.moduleSpecifier, only, clause === undefined);
    } else if (ts.isExportDeclaration(node))
      add(node, node.moduleSpecifier, node.isTypeOnly || allTypes(node.exportClause));
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add(node, node.arguments[0], false);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node, node.argument.literal, true);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/**
 * The table "One way through the house": by folder what it may import, of what only types, and of what it
 * may only start scripts.
 */
export function allowedImports(notes: string): ReadonlyMap<string, Allowed> {
  const rows = [...notes.matchAll(/^\| ((?:`[a-z]+\/`(?:, )?)+) \|[^|]*\| ([^|]*) \|$/gm)];
  const names = (list: string): Set<string> =>
    new Set(
      list
        .split(/,\s*/)
        .map((name) => name.trim())
        .filter((name) => name !== "" && name !== "nothing of ours"),
    );
  return new Map(
    rows.flatMap(([, folders, may]) => {
      const parts = may!.split(/;\s*/);
      const listed = (opening: string): Set<string> =>
        names(parts.find((part) => part.startsWith(opening))?.slice(opening.length) ?? "");
      const values = parts.filter((part) => !/^(?:types|scripts) of /.test(part)).join();
      return [...folders!.matchAll(/`([a-z]+)\/`/g)].map(
        ([, folder]) =>
          [folder!, { values: names(values), types: listed("types of "), scripts: listed("scripts of ") }] as const,
      );
    }),
  );
}

/** The folder of `src/` that an import leads to; undefined for packages and for what lies elsewhere. */
export function folderOf({ from, what }: Pick<Import, "from" | "what">): string | undefined {
  if (!what.startsWith(".")) return undefined;
  return /^src\/([a-z]+)\//.exec(normalize(join(dirname(from), what)).replaceAll("\\", "/"))?.[1];
}

/** One sentence for each import that the table does not allow. */
export const violations = (imports: readonly Import[], allowed: ReadonlyMap<string, Allowed>): string[] =>
  imports.flatMap((one) => {
    const [own, other] = [/^src\/([a-z]+)\//.exec(one.from)?.[1], folderOf(one)];
    if (own === undefined || other === undefined || own === other) return [];
    const may = allowed.get(own);
    if (may?.values.has(other) || (one.typesOnly && may?.types.has(other)) || (one.starts && may?.scripts.has(other)))
      return [];
    return [
      `${one.from}:${one.line}: ${own}/ may not import ${other}/ (${one.what}). Move what both need into a folder both may import, or change the table in DEVELOPERS.md and say there why.`,
    ];
  });

export const readImports = (folder: string): Import[] =>
  sourceFiles(folder).flatMap((file) => importsOf(file, readFileSync(file, "utf8")));
