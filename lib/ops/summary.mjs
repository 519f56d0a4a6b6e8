/** Prints what went wrong, one line for each part and the sum in the last line, and returns the exit code. */
export function summarise(results) {
  const sum = (count) => results.reduce((total, result) => total + result[count], 0);
  console.log("");
  for (const trouble of results.flatMap(({ told }) => told ?? [])) console.log(`${trouble}\n`);
  for (const { name, passed, failed } of results) {
    const tests = passed + failed > 1 || passed > 0 ? ` (${passed} passed, ${failed} failed)` : "";
    console.log(`${failed === 0 ? "ok    " : "FAILED"} ${name}${tests}`);
  }
  console.log(`\n${sum("passed")} passed, ${sum("failed")} failed`);
  return sum("failed") === 0 ? 0 : 1;
}
