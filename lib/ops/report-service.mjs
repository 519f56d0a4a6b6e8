const COUNTS = ["acknowledged", "lost", "doubled", "halfWritten"];

/** Prints what became of everything, as tables for docs/reliability.md, and returns the exit code. */
export function reportService({ verdicts, times, isControl, isDrained, hasDisk, tries, cuts }) {
  console.log(isControl ? "\nControl, with a database that confirms too early:\n" : "");
  console.log("| what | acknowledged | lost | doubled | half-written |\n| --- | --- | --- | --- | --- |");
  const sums = Object.fromEntries(COUNTS.map((name) => [name, verdicts.reduce((sum, each) => sum + each[name], 0)]));
  for (const each of [...verdicts, { kind: "all", ...sums }]) {
    console.log(`| ${each.kind} | ${COUNTS.map((name) => each[name]).join(" | ")} |`);
  }
  console.log(`\n${tries} writes were tried, and ${cuts} connections cut in the middle.\n`);
  console.log("| harm | times | lasted, median | until a write was acknowledged, median | longest |");
  console.log("| --- | --- | --- | --- | --- |");
  for (const [kind, all] of times) {
    const of = (name) => all.map((each) => each[name]).sort((a, b) => a - b);
    const median = (sorted) => inS(sorted[sorted.length >> 1]);
    const recovered = of("recovered");
    console.log(
      `| ${[kind, all.length, median(of("lasted")), median(recovered), inS(recovered.at(-1))].join(" | ")} |`,
    );
  }
  if (!hasDisk) console.log("\nThe disk was never full: this process may not mount one of its own.");
  if (isControl) return sums.lost > 0 ? 0 : 1;
  // A kind that was never acknowledged shows nothing.
  const isShown = verdicts.every(({ acknowledged }) => acknowledged > 0);
  return isDrained && isShown && sums.lost + sums.doubled + sums.halfWritten === 0 ? 0 : 1;
}

const inS = (ms) => `${(ms / 1000).toFixed(1)} s`;
