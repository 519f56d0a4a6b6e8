import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";
import type { Asked } from "./http";

const MANIFEST = join(process.cwd(), ".next", "server", "server-reference-manifest.json");
const manifest = z.object({
  node: z.record(z.string(), z.object({ filename: z.string().optional(), exportedName: z.string().optional() })),
});

/** Requests of the server actions of the built app, as its own pages send them. */
export async function readActions(): Promise<(file: string, name: string, argument: unknown) => Omit<Asked, "path">> {
  const { node } = manifest.parse(JSON.parse(await readFile(MANIFEST, "utf8")));
  const ids = new Map(
    Object.entries(node).map(([id, each]) => [`${each.filename ?? ""}#${each.exportedName ?? ""}`, id]),
  );
  return (file, name, argument) => {
    const id = ids.get(`${file}#${name}`);
    if (id === undefined) throw new Error(`the built app has no action ${name} of ${file}`);
    const headers = { "next-action": id, "content-type": "text/plain;charset=UTF-8", accept: "text/x-component" };
    return { method: "POST", headers, body: JSON.stringify([argument]) };
  };
}
