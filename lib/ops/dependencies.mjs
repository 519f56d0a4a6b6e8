/**
 * A check of what is installed, by the lock file: every licence is one that this project takes, every package comes with the
 * sum of its contents, and none is older than its last hole that this program would have. Where the registry tells, none has
 * a serious hole that is not explained.
 */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { readAdvisories } from "./advisories.mjs";
import { ROOT } from "./project-root.mjs";

/** Licences that ask for no more than their own text. */
const TAKEN = new Set([
  ...["MIT", "MIT-0", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "BlueOak-1.0.0", "Unlicense"],
  ...["CC0-1.0", "Python-2.0"],
]);

/** Packages under another licence, by the beginning of their name, and why they may be here. */
const EXPLAINED = {
  "@img/sharp-": "LGPL-3.0: libvips as its own library, unchanged, which sharp loads.",
  "web-push": "MPL-2.0, of its own files, which are unchanged.",
  lightningcss: "MPL-2.0, of its own files; it builds the styles and is not served.",
  "axe-core": "MPL-2.0; tests alone.",
  "ical.js": "MPL-2.0; tests alone.",
  hyperformula: "GPL-3.0; measured beside this program by one bench, never loaded by it and never handed on.",
  elkjs: "EPL-2.0; comes with a tool of Prisma that is not loaded.",
  "caniuse-lite": "CC-BY-4.0: data about browsers, for the build.",
  "spdx-exceptions": "CC-BY-3.0: a list of names, for the linter.",
  "seq-queue": "MIT by its file LICENSE; its package.json says nothing.",
};

/** The first version without holes that were found in one before, and what they were. */
const FLOORS = {
  next: ["16.2.6", "middleware passed over, cached pages of others"],
  react: ["19.2.6", "code run from a request to an action"],
  "react-dom": ["19.2.6", "code run from a request to an action"],
  "next-auth": ["4.24.12", "a mail address that reaches somebody else"],
  nodemailer: ["7.0.7", "a mail address that reaches somebody else"],
  sharp: ["0.32.6", "a picture that runs code in libwebp"],
};

const lock = JSON.parse(await readFile(join(ROOT, "package-lock.json"), "utf8"));
const packages = Object.entries(lock.packages)
  .filter(([path]) => path !== "")
  .map(([path, entry]) => ({ name: entry.name ?? path.replace(/^.*node_modules\//, ""), ...entry }));

const { notAsked, serious, told } = await readAdvisories();
if (notAsked !== null)
  console.log(`  Advisories: the registry could not be asked (${notAsked}); the rest was looked at.`);
for (const each of told) console.log(`  Advisory: ${each}`);
const complaints = [
  ...packages.flatMap(licenceComplaint),
  ...packages.flatMap(sumComplaint),
  ...floorComplaints(),
  ...serious.map((each) => `${each}. Take a newer version, or explain it in lib/ops/advisories.mjs.`),
];
for (const complaint of complaints) console.error(complaint);
process.exitCode = complaints.length === 0 ? 0 : 1;

function licenceComplaint({ name, version, license }) {
  if (license !== undefined && isTaken(license)) return [];
  if (Object.keys(EXPLAINED).some((begin) => name.startsWith(begin))) return [];
  const said = license ?? "no licence";
  return [`${name} ${version}: ${said}. Take another package, or explain it in lib/ops/dependencies.mjs.`];
}

/** "A OR B" is ours to choose; of "A AND B" each binds. */
function isTaken(expression) {
  const plain = expression.replaceAll(/[()]/g, "");
  return plain.split(/ or /i).some((choice) => choice.split(/ and /i).every((licence) => TAKEN.has(licence.trim())));
}

/** What comes inside of another package is in the sum of that one. */
function sumComplaint({ name, version, integrity, inBundle }) {
  if (inBundle === true || integrity?.startsWith("sha512-")) return [];
  return [`${name} ${version}: the lock file has no sum of its contents.`];
}

function floorComplaints() {
  return Object.entries(FLOORS).flatMap(([name, [floor, hole]]) =>
    packages
      .filter((each) => each.name === name && isOlder(each.version, floor))
      .map(({ version }) => `${name} ${version} is older than ${floor}, before which it had a hole: ${hole}.`),
  );
}

function isOlder(version, floor) {
  const [have, need] = [version, floor].map((text) => text.split(/[.-]/).map(Number));
  const at = need.findIndex((part, index) => have[index] !== part);
  return at >= 0 && have[at] < need[at];
}
