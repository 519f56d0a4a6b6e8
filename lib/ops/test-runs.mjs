import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { stripVTControlCharacters } from "node:util";
import { ROOT } from "./project-root.mjs";
import { run } from "./run.mjs";

/** Runs one vitest project and counts its tests. */
export async function runVitest(project, env = process.env) {
  const vitest = join(ROOT, "node_modules", "vitest", "vitest.mjs");
  return counted(`${project} tests`, async (report) => {
    const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
    return run(process.execPath, [vitest, "run", "--project", project, ...reporters], { env, show: true });
  });
}

/** Runs the browser tests against a server that answers, and counts them. */
export async function runPlaywright(env) {
  const playwright = join(ROOT, "node_modules", "playwright", "cli.js");
  return counted("browser tests", async (report) => {
    const withReport = { ...env, PLAYWRIGHT_JSON_OUTPUT_FILE: report };
    return run(process.execPath, [playwright, "test", "--reporter=list,json"], { env: withReport, show: true });
  });
}

async function counted(name, runWith) {
  console.log(`\nRunning the ${name} …`);
  const folder = await mkdtemp(join(tmpdir(), "gylebook-report-"));
  const report = join(folder, "report.json");
  try {
    const { code } = await runWith(report);
    const text = await readFile(report, "utf8").catch(() => null);
    const { passed, failed, told } = text === null ? NOTHING : countIn(JSON.parse(text));
    // A file that cannot be loaded has no failed test in it, and has failed all the same.
    return { name, passed, failed: code !== 0 && failed === 0 ? 1 : failed, told };
  } finally {
    await rm(folder, { recursive: true });
  }
}

const NOTHING = { passed: 0, failed: 0, told: [] };

/** The two runners count under different names. A skipped test is neither passed nor failed. */
function countIn(report) {
  if ("numPassedTests" in report) return { passed: report.numPassedTests, failed: report.numFailedTests, told: [] };
  const { expected, unexpected, flaky } = report.stats;
  return { passed: expected + flaky, failed: unexpected, told: report.suites.flatMap(troubleIn) };
}

/** What went wrong, if only at the first try, so that it stands at the end of a long log. */
function troubleIn({ suites = [], specs = [] }) {
  const own = specs.flatMap(({ title, file, line, tests }) =>
    tests
      .filter(({ status }) => status === "unexpected" || status === "flaky")
      .map(({ status, results }) => {
        const error = results.find((result) => result.error !== undefined)?.error.message ?? "no message";
        const outcome = status === "flaky" ? "passed only at the second try" : "failed";
        return `${file}:${line} ${title}: ${outcome}\n${plain(error)}`;
      }),
  );
  return [...own, ...suites.flatMap(troubleIn)];
}

const LINES_OF_AN_ERROR = 12;

function plain(message) {
  const lines = stripVTControlCharacters(message).split("\n");
  return lines
    .filter((line) => line.trim() !== "")
    .slice(0, LINES_OF_AN_ERROR)
    .map((line) => `    ${line}`)
    .join("\n");
}
