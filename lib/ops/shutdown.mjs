import { stopChildren } from "./run.mjs";

const tasks = [];
let ending = null;

/** Has something done when the command ends, however it ends; the last one asked for is done first. */
export function onShutdown(task) {
  tasks.unshift(task);
}

export function shutdown() {
  ending ??= endAll();
  return ending;
}

async function endAll() {
  stopChildren();
  for (const task of tasks) await task();
}

/** Ends in good order when somebody stops the command; asking twice is no quicker. */
export function shutDownOnSignals(exitCode, onSignal) {
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) {
    process.on(signal, () => {
      onSignal();
      void shutdown().finally(() => process.exit(exitCode));
    });
  }
}
