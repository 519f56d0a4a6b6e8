import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const BUILT = fileURLToPath(new URL("../../../.next", import.meta.url));
const APP = join(BUILT, "server", "app");
const MANIFEST = "page_client-reference-manifest.js";

export interface PageWeight {
  readonly route: string;
  /** Script that the page fetches before anybody has touched it, compressed as the server in front does it, bytes. */
  readonly bytes: number;
  readonly files: number;
}

/** What each page of the built app fetches first, by its manifests. */
export function pageWeights(): readonly PageWeight[] {
  const sizes = new Map<string, number>();
  const sizeOf = (file: string): number => {
    const known = sizes.get(file) ?? gzipSync(readFileSync(join(BUILT, file)), { level: 6 }).length;
    sizes.set(file, known);
    return known;
  };
  return readdirSync(APP, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(MANIFEST) && !file.includes("_not-found"))
    .map((file) => {
      const { route, entries } = entriesOf(file);
      const scripts = new Set([...mainOf(file), ...entries]);
      const bytes = [...scripts].reduce((sum, script) => sum + sizeOf(script), 0);
      return { route, bytes, files: scripts.size };
    });
}

/** What every page begins with. */
function mainOf(file: string): readonly string[] {
  const manifest = file.replace(MANIFEST, join("page", "build-manifest.json"));
  const { rootMainFiles } = JSON.parse(readFileSync(join(APP, manifest), "utf8")) as { rootMainFiles: string[] };
  return rootMainFiles;
}

/** The route, and what the components of the page and its layouts bring along. */
function entriesOf(file: string): { readonly route: string; readonly entries: readonly string[] } {
  const text = readFileSync(join(APP, file), "utf8");
  const [, route, json] = /__RSC_MANIFEST\["([^"]+)"\]\s*=\s*([\s\S]+?);?\s*$/.exec(text) ?? [];
  if (route === undefined || json === undefined) throw new Error(`${file} is written otherwise by now`);
  const { entryJSFiles } = JSON.parse(json) as { entryJSFiles: Record<string, string[]> };
  return { route: route.replace(/\/page$/, "") || "/", entries: Object.values(entryJSFiles).flat() };
}
