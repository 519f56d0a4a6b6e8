import { afterEach, describe, expect, it, vi } from "vitest";
import { readiness } from "@/lib/server/health";
import { withClient } from "../../support/open-client";

afterEach(() => {
  vi.unstubAllGlobals();
});

const owner = <T>(sql: string, values: readonly unknown[] = []) =>
  withClient(
    process.env.DATABASE_URL ?? "",
    async (client) => (await client.query<Record<string, T>>(sql, [...values])).rows,
  );

describe("readiness", () => {
  it("is said where the database has every migration of this version", async () => {
    // The first connection may take longer than readiness is patient.
    await vi.waitFor(async () => expect(await readiness()).toBe("ready"), { timeout: 20_000 });
  });

  it("is not said while the server is about to end", async () => {
    vi.stubGlobal("gylebookOperations", { isDraining: true });
    expect(await readiness()).toBe("draining");
  });

  it("is not said where the last migration of this version is missing, and is where there is a later one", async () => {
    const [last] = await owner<string>("SELECT max(migration_name) AS name FROM _prisma_migrations");
    const name = last?.name ?? "";
    const rename = (from: string, to: string) =>
      owner("UPDATE _prisma_migrations SET migration_name = $2 WHERE migration_name = $1", [from, to]);
    await rename(name, "20990101000000_of_the_next_version");
    try {
      expect(await readiness()).toBe("old database");
      await owner(
        "INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at) VALUES ('later', 'x', $1, now())",
        [name],
      );
      expect(await readiness()).toBe("ready");
    } finally {
      await owner("DELETE FROM _prisma_migrations WHERE id = 'later'");
      await rename("20990101000000_of_the_next_version", name);
    }
  });
});
