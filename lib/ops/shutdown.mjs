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
  const stop = () => {
    onSignal();
    void shutdown().finally(() => process.exit(exitCode));
  };
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, stop);
  if (process.env.npm_lifecycle_event !== undefined) whenLeftAlone(stop);
}

/** npm passes a signal on to the shell between us, which ends and leaves us without a parent. */
function whenLeftAlone(stop) {
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    stop();
  }, 500);
  watch.unref();
}
