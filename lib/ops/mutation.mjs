/**
 * `npm run mutation`: changes lib/calc in thousands of small ways and counts how many of them a test notices.
 * `npm run mutation -- gravity heat` takes only these subjects, `-- ledger --share=0.1` a tenth of the lines of a large one,
 * drawn by lot in pieces of a dozen and the same each time.
 */
import { createHash } from "node:crypto";
import { mkdir, readdir, readFile } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { runCommand } from "./run-command.mjs";

/** A change is made where it lies within a piece, so that most of those that go over several lines are drawn as well. */
const PIECE = 12;

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { share: { type: "string" } } });
  const share = Number(values.share ?? 1);
  if (!(share > 0 && share <= 1))
    throw new Refusal(`--share=${values.share} is no share: it is above 0 and at most 1.`);
  const subjects = positionals.length === 0 ? await subjectsWithTests() : positionals;
  await mkdir(join(ROOT, ".data"), { recursive: true });
  const counts = [];
  for (const subject of subjects) counts.push({ subject, ...(await countNoticed(subject, share)) });
  report(counts);
});

async function subjectsWithTests() {
  const entries = await readdir(join(ROOT, "tests", "calc"), { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
}

/** What of a subject is changed: all its files, or pieces of them as a hash of their names and places has it. */
async function placesOf(subject, share) {
  const files = await filesOf(subject);
  if (share === 1) return files;
  const pieces = await Promise.all(files.map((file) => piecesOf(file, share)));
  return pieces.flat();
}

async function piecesOf(file, share) {
  const lines = (await readFile(join(ROOT, file), "utf8")).split("\n").length;
  const starts = Array.from({ length: Math.ceil(lines / PIECE) }, (_, i) => i * PIECE + 1);
  return starts
    .filter((start) => lot(`${file}:${start}`) < share)
    .map((start) => `${file}:${start}-${start + PIECE - 1}`);
}

/** Between 0 and 1, evenly. */
function lot(name) {
  return createHash("sha256").update(name).digest().readUInt32BE() / 2 ** 32;
}

async function filesOf(subject) {
  const entries = await readdir(join(ROOT, "lib", "calc", subject), { recursive: true });
  const files = entries.filter(
    (name) => name.endsWith(".ts") && !/(^|[\\/])(tables|functions)[\\/]|^index\.ts$/.test(name),
  );
  return files.map((name) => `lib/calc/${subject}/${name.replaceAll("\\", "/")}`);
}

/** Only the subject's own tests run: what another subject would notice by chance does not count. */
async function countNoticed(subject, share) {
  const places = await placesOf(subject, share);
  process.env.GYLEBOOK_SUBJECT = subject;
  // A wrong sign shows in the first few brews of a thousand, or not at all.
  process.env.GYLEBOOK_RANDOM_BREWS ??= "60";
  const { Stryker } = await import("@stryker-mutator/core");
  const results = await new Stryker({
    mutate: places,
    testRunner: "vitest",
    plugins: ["@stryker-mutator/vitest-runner"],
    vitest: { configFile: "tests/support/mutation.vitest.config.ts", related: false },
    coverageAnalysis: "perTest",
    // Words are read by people; a changed word is no wrong number.
    mutator: { excludedMutations: ["StringLiteral"] },
    // A constant read once at import needs a fresh start for each change, which takes a hundred times as long.
    ignoreStatic: true,
    concurrency: availableParallelism(),
    // A change that ends nowhere counts as noticed; one that is slow on a busy machine must not.
    timeoutMS: 20_000,
    timeoutFactor: 4,
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
  return {
    noticed,
    missed: withStatus("Survived", "NoCoverage"),
    endless: withStatus("Timeout"),
    pieces: share === 1 ? null : places.length,
  };
}

function report(counts) {
  const sum = (of) => counts.reduce((total, count) => total + count[of], 0);
  for (const count of counts) console.log(line(count));
  console.log(
    line({ subject: "in all", noticed: sum("noticed"), missed: sum("missed"), endless: sum("endless"), pieces: null }),
  );
}

function line({ subject, noticed, missed, endless, pieces }) {
  const tried = noticed + missed;
  const share = tried === 0 ? "–" : `${((100 * noticed) / tried).toFixed(1)} %`;
  return `${subject.padEnd(14)} ${share.padStart(7)}  ${noticed} of ${tried} changes noticed, ${endless} of them by their time limit${pieces === null ? "" : `; in ${pieces} pieces of a dozen lines`}`;
}
