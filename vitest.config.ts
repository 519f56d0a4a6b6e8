import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL(".", import.meta.url));

export default defineConfig({
  resolve: {
    alias: {
      "@": root,
      // The package throws outside a server bundle, which is its purpose; tests of lib/server run in plain Node.
      "server-only": fileURLToPath(new URL("tests/support/server-only-stub.ts", import.meta.url)),
    },
  },
  test: {
    projects: [
      { extends: true, test: { name: "unit", include: ["tests/{access,calc,day,model,ui}/**/*.test.ts"] } },
      {
        extends: true,
        test: {
          name: "server",
          include: ["tests/server/**/*.test.ts"],
          globalSetup: "tests/support/database.ts",
          fileParallelism: false,
          testTimeout: 30_000,
          hookTimeout: 30_000,
        },
      },
    ],
  },
});
