import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const subject = process.env.GYLEBOOK_SUBJECT ?? "**";

/** The tests of one subject of the calculation, whose code the mutation run changes. */
export default defineConfig({
  resolve: { alias: { "@": fileURLToPath(new URL("../..", import.meta.url)) } },
  test: { include: [`tests/calc/${subject}/**/*.test.ts`] },
});
