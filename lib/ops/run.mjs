import { spawn } from "node:child_process";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";

const PROGRESS_EVERY_MS = 10_000;
const LINES_OF_A_FAILURE = 60;
const running = new Set();

/** Starts a child that is ended with us at the latest. */
export function start(command, args, options = {}) {
  const child = spawn(command, args, { cwd: ROOT, ...options });
  running.add(child);
  child.once("close", () => running.delete(child));
  return child;
}

/** Ends what is still running, when somebody stops the command in the middle of a step. */
export function stopChildren() {
  for (const child of running) child.kill("SIGTERM");
}

/** Runs a program to its end and returns its exit code and all that it printed. */
export function run(command, args, { show = false, ...options } = {}) {
  return new Promise((resolve, reject) => {
    const child = start(command, args, { stdio: ["ignore", "pipe", "pipe"], ...options });
    let output = "";
    for (const name of ["stdout", "stderr"]) {
      child[name]?.setEncoding("utf8").on("data", (text) => {
        output += text;
        if (show) process[name].write(text);
      });
    }
    child.once("error", reject);
    child.once("close", (code) => resolve({ code: code ?? 1, output }));
  });
}

/** Runs one long step under a heading, with a sign of life, and shows what it printed only if it fails. */
export async function step(heading, command, args, options = {}) {
  const begun = Date.now();
  const seconds = () => `${Math.round((Date.now() - begun) / 1000)} s`;
  console.log(`${heading} …`);
  const progress = setInterval(() => console.log(`  … ${seconds()}`), PROGRESS_EVERY_MS);
  try {
    const { code, output } = await run(command, args, options);
    if (code === 0) return output;
    console.error(output.trimEnd().split("\n").slice(-LINES_OF_A_FAILURE).join("\n"));
    throw new Refusal(`${heading}: failed after ${seconds()} (exit code ${code}); what it printed stands above.`);
  } finally {
    clearInterval(progress);
  }
}

/** Runs one of the project's TypeScript commands. */
export function typescriptCommand(file) {
  return [process.execPath, ["--conditions=react-server", "--import", "tsx", file]];
}

/** Runs one of them to its end and shows what it says; its exit code is ours. */
export async function runTypescript(file, args, env) {
  const [command, own] = typescriptCommand(file);
  const { code } = await run(command, [...own, ...args], { env, show: true });
  return code;
}
