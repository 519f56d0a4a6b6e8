import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const subject = process.env.GYLEBOOK_SUBJECT ?? "**";

/** The tests of one subject of the calculation, whose code the mutation run changes. */
export default defineConfig({
  resolve: { alias: { "@": fileURLToPath(new URL("../..", import.meta.url)) } },
  // On a machine with other work the first run of all tests is slow; a change that ends nowhere has a limit of its own.
  test: { include: [`tests/calc/${subject}/**/*.test.ts`], testTimeout: 120_000 },
});
