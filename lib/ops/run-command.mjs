import { Refusal } from "./refusal.mjs";
import { shutdown, shutDownOnSignals } from "./shutdown.mjs";

/** Runs a command, ends what it started, and exits with its code. A signal ends it with `codeOfSignal`. */
export async function runCommand(work, { codeOfSignal = 0 } = {}) {
  let stopped = false;
  shutDownOnSignals(codeOfSignal, () => (stopped = true));
  let code = 1;
  try {
    code = (await work()) ?? 0;
  } catch (error) {
    // What fails because somebody stopped it is no news.
    if (!stopped) console.error(error instanceof Refusal ? error.message : error);
  }
  await shutdown();
  process.exit(stopped ? codeOfSignal : code);
}
