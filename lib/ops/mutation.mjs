/**
 * `npm run mutation`: changes lib/calc in thousands of small ways and counts how many of them a test notices.
 * `npm run mutation -- gravity heat` takes only these subjects, `-- ledger --files=8` eight files of a large one, drawn by
 * lot and the same each time.
 */
import { createHash } from "node:crypto";
import { mkdir, readdir } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { runCommand } from "./run-command.mjs";

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { files: { type: "string" } } });
  const most = values.files === undefined ? Infinity : Number(values.files);
  if (!(most >= 1)) throw new Refusal(`--files=${values.files} is no number of files: it is 1 or more.`);
  const subjects = positionals.length === 0 ? await subjectsWithTests() : positionals;
  await mkdir(join(ROOT, ".data"), { recursive: true });
  const counts = [];
  for (const subject of subjects) counts.push({ subject, ...(await countNoticed(subject, most)) });
  report(counts);
});

async function subjectsWithTests() {
  const entries = await readdir(join(ROOT, "tests", "calc"), { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
}

/** Files of a subject that are changed: all, or so many of them in the order of a hash of their names. */
async function filesOf(subject, most) {
  const entries = await readdir(join(ROOT, "lib", "calc", subject), { recursive: true });
  const files = entries.filter(
    (name) => name.endsWith(".ts") && !/(^|[\\/])(tables|functions)[\\/]|^index\.ts$/.test(name),
  );
  const lot = (name) => createHash("sha256").update(name).digest("hex");
  const drawn = files.sort((one, other) => (lot(one) < lot(other) ? -1 : 1)).slice(0, most);
  return { files: drawn.map((name) => `lib/calc/${subject}/${name.replaceAll("\\", "/")}`), of: files.length };
}

/** Only the subject's own tests run: what another subject would notice by chance does not count. */
async function countNoticed(subject, most) {
  const { files, of } = await filesOf(subject, most);
  process.env.GYLEBOOK_SUBJECT = subject;
  // A wrong sign shows in the first few brews of a thousand, or not at all.
  process.env.GYLEBOOK_RANDOM_BREWS ??= "60";
  const { Stryker } = await import("@stryker-mutator/core");
  const results = await new Stryker({
    mutate: files,
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
  const noticed = withStatus("Killed", "Timeout");
  return { noticed, missed: withStatus("Survived", "NoCoverage"), files: files.length, of };
}

function report(counts) {
  const sum = (of) => counts.reduce((total, count) => total + count[of], 0);
  for (const count of counts) console.log(line(count));
  console.log(line({ subject: "in all", noticed: sum("noticed"), missed: sum("missed") }));
}

function line({ subject, noticed, missed, files, of }) {
  const tried = noticed + missed;
  const share = tried === 0 ? "–" : `${((100 * noticed) / tried).toFixed(1)} %`;
  return `${subject.padEnd(14)} ${share.padStart(7)}  ${noticed} of ${tried} changes noticed${files === of ? "" : `, in ${files} of ${of} files`}`;
}
