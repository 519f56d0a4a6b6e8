/**
 * Builds the pages that devices keep, that of brew days and that of judging: of each its script, with a part that may come
 * after the page, one style, the worker that keeps them on a device, and the list of them.
 * They are no pages of Next: they must start without a network, from files that do not change between two visits.
 */
import { Buffer } from "node:buffer";
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { isStale } from "./newest-change.mjs";
import { ROOT } from "./project-root.mjs";

const SOURCES = ["lib/day", "lib/calc", "lib/model", "lib/ui", "app/globals.css", "package-lock.json"];
/** Each lives behind its own first part of the address, has a worker of its own, and is renewed by itself. */
const PAGES = [
  // A part that is fetched later is a build of its own, for parts of one build would be cut along files, and the library's
  // lists name them all.
  { name: "brew-day", entry: "lib/day/screen/main.tsx", later: { NEXT_READING: "lib/model/next-reading.ts" } },
  { name: "judging", entry: "lib/day/tasting/main.tsx", later: {} },
];
/**
 * What stands in for React on these pages alone: half of their script was React's, and a phone in a cold garage over a thin
 * network waits for each byte of it (decision 60). Components are written for both.
 */
const SMALL_REACT = {
  react: "preact/compat",
  "react-dom": "preact/compat",
  "react-dom/client": "preact/compat/client",
  "react/jsx-runtime": "preact/jsx-runtime",
};
const folderOf = ({ name }) => join(ROOT, ".build", name);
const listOf = (page) => join(folderOf(page), "files.json");

/** Builds them, unless they are newer than every source file. */
export async function ensureDay() {
  const sources = [...SOURCES, "lib/ops/build-day.mjs"].map((path) => join(ROOT, path));
  if (PAGES.every((page) => existsSync(listOf(page)) && !isStale(listOf(page), sources))) return;
  const style = Buffer.from(await styles());
  for (const page of PAGES) await buildPage(page, style);
}

async function buildPage(page, css) {
  const { build } = await import("esbuild");
  const common = {
    bundle: true,
    write: false,
    minify: true,
    format: "esm",
    target: "es2022",
    jsx: "automatic",
    alias: { "@": ROOT, ...SMALL_REACT },
    define: { "process.env.NODE_ENV": '"production"' },
    legalComments: "none",
    logLevel: "error",
  };
  const addressOf = (name) => `/${page.name}/files/${name}`;
  const parts = [];
  const addresses = {};
  for (const [constant, entry] of Object.entries(page.later)) {
    const later = await build({ ...common, entryPoints: [join(ROOT, entry)] });
    const part = await emit(page, basename(entry, ".ts"), "js", Buffer.from(later.outputFiles[0].contents));
    parts.push(part);
    addresses[constant] = JSON.stringify(addressOf(part));
  }
  const script = await build({
    ...common,
    entryPoints: [join(ROOT, page.entry)],
    define: { ...common.define, ...addresses },
    external: [addressOf("*")],
  });
  const first = await emit(page, "day", "js", Buffer.from(script.outputFiles[0].contents));
  const style = await emit(page, "day", "css", css);
  const names = [first, style, ...parts];
  const paths = names.map(addressOf);
  const version = createHash("sha256").update(paths.join()).digest("hex").slice(0, 16);
  const shell = JSON.stringify([`/${page.name}/page`, ...paths]);
  const written = { VERSION: JSON.stringify(version), PAGE_NAME: JSON.stringify(page.name), SHELL: shell };
  const worker = await build({
    ...common,
    entryPoints: [join(ROOT, "lib/day/worker/service-worker.ts")],
    format: "iife",
    define: { ...common.define, ...written },
  });
  await place(page, "sw.js", Buffer.from(worker.outputFiles[0].contents));
  const list = { version, script: addressOf(first), style: addressOf(style), files: names };
  await place(page, "files.json", Buffer.from(JSON.stringify(list)));
}

/** Writes a file under a name that says what is in it. */
async function emit(page, stem, ending, content) {
  const hash = createHash("sha256").update(content).digest("hex").slice(0, 12);
  const name = `${stem}-${hash}.${ending}`;
  await place(page, name, content);
  return name;
}

/** Half a file is never served: it gets its name when it is whole. */
async function place(page, name, content) {
  const folder = folderOf(page);
  await mkdir(folder, { recursive: true });
  const draft = join(folder, `${name}.${process.pid}.draft`);
  await writeFile(draft, content);
  await rename(draft, join(folder, name));
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
