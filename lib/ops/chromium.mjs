import { existsSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { step } from "./run.mjs";

const SYSTEM = "/usr/bin/chromium";
const HELP =
  "The browser tests need Chromium: install it, or set CHROMIUM_PATH to the program of an installed Chromium or Chrome.";

/** The browser for the tests, installed if there is none. */
export async function ensureChromium() {
  const given = process.env.CHROMIUM_PATH ?? "";
  if (given !== "") {
    if (existsSync(given)) return given;
    throw new Refusal(`CHROMIUM_PATH is ${given}, and there is no such file.`);
  }
  return (await findChromium()) ?? installChromium();
}

async function findChromium() {
  if (existsSync(SYSTEM)) return SYSTEM;
  const { chromium } = await import("playwright");
  const own = chromium.executablePath();
  return existsSync(own) ? own : null;
}

async function installChromium() {
  try {
    if (process.getuid?.() === 0 && existsSync("/etc/debian_version")) await installFromDebian();
    else await installFromPlaywright();
  } catch (error) {
    throw new Refusal(HELP, { cause: error });
  }
  const installed = await findChromium();
  if (installed === null) throw new Refusal(HELP);
  return installed;
}

async function installFromDebian() {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  await step("Looking for packages of the system", "apt-get", ["update"], { env });
  await step("Installing Chromium", "apt-get", ["install", "-y", "--no-install-recommends", "chromium"], { env });
}

async function installFromPlaywright() {
  const cli = join(ROOT, "node_modules", "playwright", "cli.js");
  await step("Installing Chromium", process.execPath, [cli, "install", "chromium"]);
}
