import { join } from "node:path";
import { ROOT } from "./project-root.mjs";
import { run, step } from "./run.mjs";

const bin = (...path) => join(ROOT, "node_modules", ...path);

const TOOLS = [
  { name: "types", args: [bin("typescript", "bin", "tsc"), "--noEmit", "-p", "."] },
  { name: "eslint", args: [bin("eslint", "bin", "eslint.js"), ".", "--max-warnings", "0"] },
  { name: "prettier", args: [bin("prettier", "bin", "prettier.cjs"), "--check", "."] },
  {
    name: "import rules",
    args: [
      bin("dependency-cruiser", "bin", "dependency-cruise.mjs"),
      "--config",
      "dependency-cruiser.cjs",
      ...["app", "lib", "prisma", "seed-demo", "tests"],
    ],
  },
  { name: "unused code", args: [bin("knip", "bin", "knip.js")] },
  { name: "dependencies", args: [join(ROOT, "lib", "ops", "dependencies.mjs")], tells: true },
];

/** Runs every checking tool, also after one has failed, and returns a result for each. */
export async function runChecks() {
  // The types of the routes are made by Next from the folders under app.
  await step("Making the types of the routes", process.execPath, [bin("next", "dist", "bin", "next"), "typegen"]);
  const results = [];
  for (const { name, args, tells = false } of TOOLS) {
    console.log(`Checking: ${name} …`);
    const { code, output } = await run(process.execPath, args);
    if (code !== 0) console.error(output.trimEnd());
    else if (tells && output !== "") console.log(output.trimEnd());
    results.push({ name: `check: ${name}`, passed: 0, failed: code === 0 ? 0 : 1 });
  }
  return results;
}
