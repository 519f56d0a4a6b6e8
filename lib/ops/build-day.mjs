/**
 * Builds the page of the brew day: its script, with a part that may come after the page, one style, the worker that keeps
 * them on a device, and the list of them.
 * It is no page of Next: it must start without a network, from files that do not change between two visits.
 */
import { Buffer } from "node:buffer";
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { isStale } from "./newest-change.mjs";
import { ROOT } from "./project-root.mjs";

const SOURCES = ["lib/day", "lib/calc", "lib/model", "lib/ui", "app/globals.css", "package-lock.json"];
const OUT = join(ROOT, ".build", "brew-day");
const LIST = join(OUT, "files.json");

/** Builds it, unless it is newer than every source file. */
export async function ensureDay() {
  const sources = [...SOURCES, "lib/ops/build-day.mjs"].map((path) => join(ROOT, path));
  if (existsSync(LIST) && !isStale(LIST, sources)) return;
  await buildDay();
}

async function buildDay() {
  const { build } = await import("esbuild");
  const common = {
    bundle: true,
    write: false,
    minify: true,
    format: "esm",
    target: "es2022",
    jsx: "automatic",
    alias: { "@": ROOT },
    define: { "process.env.NODE_ENV": '"production"' },
    legalComments: "none",
    logLevel: "error",
  };
  // A build of its own, for parts of one build would be cut along files, and the library's lists name them all.
  const later = await build({ ...common, entryPoints: [join(ROOT, "lib/model/next-reading.ts")] });
  const part = await emit("next-reading", "js", Buffer.from(later.outputFiles[0].contents));
  const script = await build({
    ...common,
    entryPoints: [join(ROOT, "lib/day/screen/main.tsx")],
    define: { ...common.define, NEXT_READING: JSON.stringify(addressOf(part)) },
    external: [addressOf("*")],
  });
  const first = await emit("day", "js", Buffer.from(script.outputFiles[0].contents));
  const style = await emit("day", "css", Buffer.from(await styles()));
  const names = [first, style, part];
  const paths = names.map(addressOf);
  const version = createHash("sha256").update(paths.join()).digest("hex").slice(0, 16);
  const worker = await build({
    ...common,
    entryPoints: [join(ROOT, "lib/day/worker/service-worker.ts")],
    format: "iife",
    define: { ...common.define, VERSION: JSON.stringify(version), SHELL: JSON.stringify(["/brew-day/page", ...paths]) },
  });
  await place("sw.js", Buffer.from(worker.outputFiles[0].contents));
  const list = { version, script: addressOf(first), style: addressOf(style), files: names };
  await place("files.json", Buffer.from(JSON.stringify(list)));
}

const addressOf = (name) => `/brew-day/files/${name}`;

/** Writes a file under a name that says what is in it. */
async function emit(stem, ending, content) {
  const hash = createHash("sha256").update(content).digest("hex").slice(0, 12);
  const name = `${stem}-${hash}.${ending}`;
  await place(name, content);
  return name;
}

/** Half a file is never served: it gets its name when it is whole. */
async function place(name, content) {
  await mkdir(OUT, { recursive: true });
  const draft = join(OUT, `${name}.${process.pid}.draft`);
  await writeFile(draft, content);
  await rename(draft, join(OUT, name));
  await rm(draft, { force: true });
}

async function styles() {
  const { default: postcss } = await import("postcss");
  const { default: tailwind } = await import("@tailwindcss/postcss");
  const from = join(ROOT, "app", "globals.css");
  const { css } = await postcss([tailwind({ base: ROOT, optimize: true })]).process(await readFile(from, "utf8"), {
    from,
  });
  return css;
}
