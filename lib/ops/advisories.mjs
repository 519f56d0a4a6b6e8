import { ROOT } from "./project-root.mjs";
import { run } from "./run.mjs";

/** Advisories that do not reach this program, by their identifier, and why not. */
const EXPLAINED = {};

/** What ends the check; the rest is told. */
const SERIOUS = new Set(["high", "critical"]);
const PATIENCE_MS = 30_000;

/**
 * What the registry knows against the versions of the lock file. Not every registry answers this, and a machine may be
 * without a network: then `notAsked` says so, and nothing else is known.
 */
export async function readAdvisories() {
  const command = process.platform === "win32" ? "npm.cmd" : "npm";
  const options = { cwd: ROOT, timeout: PATIENCE_MS, shell: process.platform === "win32" };
  try {
    const { output } = await run(command, ["audit", "--json", "--package-lock-only", "--fetch-retries=0"], options);
    return judge(JSON.parse(output.slice(output.indexOf("{"), output.lastIndexOf("}") + 1)));
  } catch {
    return { notAsked: "npm gave no answer that can be read", serious: [], told: [] };
  }
}

/** An answer of `npm audit --json`, sorted into what is serious, what is only told, and what is explained above. */
export function judge({ vulnerabilities, error, message }, explained = EXPLAINED) {
  if (vulnerabilities === undefined) {
    const reason = error?.summary || message || error?.code || "no reason was given";
    return { notAsked: String(reason).split("\n")[0].slice(0, 160), serious: [], told: [] };
  }
  const advisories = Object.values(vulnerabilities).flatMap(({ name, via }) =>
    // A name among them is a package that only depends on the one with the hole.
    via.filter((each) => typeof each === "object").map((each) => ({ name, id: identifierOf(each), ...each })),
  );
  const open = advisories.filter(({ id }) => explained[id] === undefined);
  const words = ({ name, id, severity, title }) => `${name}: ${severity}, ${id}, ${title}`;
  return {
    notAsked: null,
    serious: open.filter(({ severity }) => SERIOUS.has(severity)).map(words),
    told: open.filter(({ severity }) => !SERIOUS.has(severity)).map(words),
  };
}

const identifierOf = ({ url, source }) => /GHSA-[\w-]+/.exec(url ?? "")?.[0] ?? String(source);
