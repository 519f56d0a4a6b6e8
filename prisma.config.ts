import { defineConfig } from "prisma/config";

export default defineConfig({
  schema: "prisma/schema",
  migrations: { path: "prisma/migrations" },
  // Making the client needs no database; only Prisma's own migration commands do.
  datasource: { url: process.env.DATABASE_URL ?? "" },
});
