import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const METHODS = ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"];

/** One action that a browser can call, and whether the code that it runs goes through the wrapper alone. */
interface FoundAction {
  readonly name: string;
  readonly file: string;
  readonly isWrapped: boolean;
}

const appFiles = readdirSync(join(ROOT, "app"), { recursive: true, encoding: "utf8" })
  .map((file) => `app/${file.split(sep).join("/")}`)
  .filter((file) => /\.tsx?$/.test(file))
  .sort();

const textOf = (file: string): string => readFileSync(join(ROOT, file), "utf8");
const parsed = (file: string): ts.SourceFile => ts.createSourceFile(file, textOf(file), ts.ScriptTarget.Latest, true);

/** "GET /s/[space]/recipes": every page, and every method of every handler, as the folders of the app have them. */
export function readRoutes(): readonly string[] {
  return appFiles.flatMap((file) => {
    if (file.endsWith("/page.tsx")) return [`GET ${routeOf(file)}`];
    if (!file.endsWith("/route.ts")) return [];
    return exportsOf(parsed(file))
      .filter(({ name }) => METHODS.includes(name))
      .map(({ name }) => `${name} ${routeOf(file)}`);
  });
}

const routeOf = (file: string): string => file.slice("app".length, file.lastIndexOf("/")) || "/";

/** Every export of a file of actions: each is an address of the server, whether a form shows it or not. */
export function readActions(): readonly FoundAction[] {
  const files = appFiles.filter((file) => /["']use server["']/.test(textOf(file)));
  return files.flatMap((file) => {
    const source = parsed(file);
    // Within a function the directive would make an action that has no name.
    if (!isOfActions(source)) return [{ name: `an action without a name in ${file}`, file, isWrapped: false }];
    const local = functionsOf(source);
    return exportsOf(source).map(({ name, node }) => ({ name, file, isWrapped: goesThroughWrapper(node, local) }));
  });
}

function isOfActions({ statements }: ts.SourceFile): boolean {
  const [first] = statements;
  return (
    first !== undefined &&
    ts.isExpressionStatement(first) &&
    ts.isStringLiteral(first.expression) &&
    first.expression.text === "use server"
  );
}

interface Export {
  readonly name: string;
  readonly node: ts.Node;
}

function exportsOf(source: ts.SourceFile): readonly Export[] {
  return source.statements.flatMap((statement): readonly Export[] => {
    const isExported =
      ts.canHaveModifiers(statement) &&
      ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;
    if (!isExported) return [];
    if (ts.isFunctionDeclaration(statement)) return [{ name: statement.name?.text ?? "default", node: statement }];
    if (!ts.isVariableStatement(statement)) return [];
    return statement.declarationList.declarations.map((each) => ({ name: each.name.getText(), node: each }));
  });
}

/** The functions of a file that it keeps to itself. */
function functionsOf(source: ts.SourceFile): ReadonlyMap<string, ts.Node> {
  const found = source.statements.flatMap((each): readonly (readonly [string, ts.Node])[] =>
    ts.isFunctionDeclaration(each) && each.name !== undefined ? [[each.name.text, each]] : [],
  );
  return new Map(found);
}

/** The wrapper, and what other files of the app make of it. */
const WRAPPERS = new Set(["action", "formAction", "draftAction", "made", "kept"]);

/** Whether all that an action returns is what the wrapper gives back. */
function goesThroughWrapper(node: ts.Node, local: ReadonlyMap<string, ts.Node>): boolean {
  if (ts.isVariableDeclaration(node)) return node.initializer !== undefined && callsWrapper(node.initializer, local);
  if (!ts.isFunctionDeclaration(node) || node.body === undefined) return false;
  const returned = node.body.statements.filter(ts.isReturnStatement);
  const run = node.body.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList: { declarations } }) => [
      ...declarations.filter(({ initializer }) => initializer !== undefined && callsWrapper(initializer, local)),
    ]);
  const made = new Set(run.map(({ name }) => name.getText()));
  return (
    returned.length > 0 &&
    returned.every(({ expression }) => {
      if (expression === undefined || !ts.isCallExpression(expression)) return false;
      return made.has(expression.expression.getText()) || callsWrapper(expression, local);
    })
  );
}

function callsWrapper(node: ts.Node, local: ReadonlyMap<string, ts.Node>): boolean {
  if (!ts.isCallExpression(node)) return false;
  if (!ts.isIdentifier(node.expression)) return callsWrapper(node.expression, local);
  const { text } = node.expression;
  if (WRAPPERS.has(text)) return true;
  const own = local.get(text);
  return own !== undefined && goesThroughWrapper(own, local);
}
