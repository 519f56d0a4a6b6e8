/**
 * `npm run mutation`: changes lib/calc in thousands of small ways and counts how many of them a test notices.
 * `npm run mutation -- gravity heat` takes only these subjects.
 */
import { mkdir, readdir } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { runCommand } from "./run-command.mjs";

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  const asked = process.argv.slice(2);
  const subjects = asked.length === 0 ? await subjectsWithTests() : asked;
  await mkdir(join(ROOT, ".data"), { recursive: true });
  const counts = [];
  for (const subject of subjects) counts.push({ subject, ...(await countNoticed(subject)) });
  report(counts);
});

async function subjectsWithTests() {
  const entries = await readdir(join(ROOT, "tests", "calc"), { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
}

/** Only the subject's own tests run: what another subject would notice by chance does not count. */
async function countNoticed(subject) {
  process.env.GYLEBOOK_SUBJECT = subject;
  // A wrong sign shows in the first few brews of a thousand, or not at all.
  process.env.GYLEBOOK_RANDOM_BREWS ??= "60";
  const { Stryker } = await import("@stryker-mutator/core");
  const results = await new Stryker({
    mutate: [`lib/calc/${subject}/**/*.ts`, "!lib/calc/explain/functions/**", "!lib/calc/**/tables/**"],
    testRunner: "vitest",
    plugins: ["@stryker-mutator/vitest-runner"],
    vitest: { configFile: "tests/support/mutation.vitest.config.ts", related: false },
    coverageAnalysis: "perTest",
    // Words are read by people; a changed word is no wrong number.
    mutator: { excludedMutations: ["StringLiteral"] },
    // A constant read once at import needs a fresh start for each change, which takes a hundred times as long.
    ignoreStatic: true,
    concurrency: availableParallelism(),
    reporters: ["json"],
    jsonReporter: { fileName: `.data/mutation/${subject}.json` },
    tempDirName: ".data/mutation/sandbox",
    ignorePatterns: ["/*", "!/lib", "!/tests", "!/docs", "!/package.json", "!/tsconfig.json"],
    disableTypeChecks: false,
    allowEmpty: true,
    logLevel: "error",
  }).runMutationTest();
  const withStatus = (...statuses) => results.filter(({ status }) => statuses.includes(status)).length;
  return { noticed: withStatus("Killed", "Timeout"), missed: withStatus("Survived", "NoCoverage") };
}

function report(counts) {
  const sum = (of) => counts.reduce((total, count) => total + count[of], 0);
  for (const count of counts) console.log(line(count));
  console.log(line({ subject: "in all", noticed: sum("noticed"), missed: sum("missed") }));
}

function line({ subject, noticed, missed }) {
  const tried = noticed + missed;
  const share = tried === 0 ? "–" : `${((100 * noticed) / tried).toFixed(1)} %`;
  return `${subject.padEnd(14)} ${share.padStart(7)}  ${noticed} of ${tried} changes noticed`;
}
