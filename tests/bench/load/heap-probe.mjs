/** Loaded into the app by `npm run load`: at SIGUSR2 it collects twice and writes down what is left. */
import { renameSync, writeFileSync } from "node:fs";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

const file = process.env.GYLEBOOK_HEAP_FILE;
if (file !== undefined) {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc");
  process.on("SIGUSR2", () => {
    collect();
    collect();
    writeFileSync(`${file}.new`, JSON.stringify(process.memoryUsage()));
    renameSync(`${file}.new`, file);
  });
}
