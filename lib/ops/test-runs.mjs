import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
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
    const { passed, failed } = text === null ? { passed: 0, failed: 0 } : countIn(JSON.parse(text));
    // A file that cannot be loaded has no failed test in it, and has failed all the same.
    return { name, passed, failed: code !== 0 && failed === 0 ? 1 : failed };
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** The two runners count under different names. A skipped test is neither passed nor failed. */
function countIn(report) {
  if ("numPassedTests" in report) return { passed: report.numPassedTests, failed: report.numFailedTests };
  const { expected, unexpected, flaky } = report.stats;
  return { passed: expected, failed: unexpected + flaky };
}
