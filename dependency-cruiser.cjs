/** @type {import("dependency-cruiser").IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: "no-cycles",
      severity: "error",
      comment: "Move the shared part into a file that both import.",
      from: {},
      to: { circular: true },
    },
    {
      name: "calc-is-pure",
      severity: "error",
      comment: "Pass the value in, or move the code to lib/server.",
      from: { path: "^lib/calc" },
      to: { pathNot: "^lib/calc" },
    },
    {
      name: "calc-by-subject",
      severity: "error",
      comment: "Import @/lib/calc/<subject>, never a file inside it.",
      from: { pathNot: "^(lib/calc|tests/calc)" },
      to: { path: "^lib/calc/[^/]+/(?!index\\.ts$)" },
    },
    {
      name: "model-is-shared",
      severity: "error",
      comment: "lib/model runs on both sides of the wire: no server, no components.",
      from: { path: "^lib/model" },
      to: { path: "^(lib/(server|ui|ops)|app)" },
    },
    {
      name: "server-has-no-ui",
      severity: "error",
      comment: "Return model types; the page lays them out.",
      from: { path: "^lib/server" },
      to: { path: "^(lib/ui|app)" },
    },
    {
      name: "ui-is-client-safe",
      severity: "error",
      comment: "Components take values and callbacks; the route binds them to the server.",
      from: { path: "^lib/ui" },
      to: { path: "^(lib/(server|ops)|app)" },
    },
    {
      name: "one-door-to-prisma",
      severity: "error",
      comment: "Go through lib/server/db.ts.",
      from: { pathNot: "^(lib/server/db\\.ts|prisma/)" },
      to: { path: "(prisma/generated|@prisma/)" },
    },
    {
      name: "db-stays-in-server",
      severity: "error",
      comment: "Call a read or write function of lib/server instead.",
      from: { pathNot: "^(lib/server|tests/(server|support|bench)|seed-demo|lib/ops)" },
      to: { path: "^lib/server/db\\.ts" },
    },
    {
      name: "ops-is-an-entry",
      severity: "error",
      comment: "lib/ops holds entry points; nothing imports them.",
      from: { pathNot: "^(lib/ops|tests)" },
      to: { path: "^lib/ops" },
    },
  ],
  options: {
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^(tests/e2e|prisma/generated)" },
  },
};
