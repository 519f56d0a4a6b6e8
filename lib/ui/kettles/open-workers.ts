import type { FromDesk } from "./desk-messages";
import type { Desks } from "./kettle-store";

/** More would only take cores from the page itself. */
const MOST_WORKERS = 2;

/** Starts the workers that compute rows, one or two. */
export function openWorkers(receive: (message: FromDesk) => void, fail: () => void): Desks {
  const count = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency - 1));
  const workers = Array.from({ length: count }, () => {
    const worker = new Worker(new URL("./kettle-worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", (event: MessageEvent<FromDesk>) => {
      receive(event.data);
    });
    worker.addEventListener("error", fail);
    return worker;
  });
  return {
    count,
    send: (desk, message) => workers[desk]?.postMessage(message),
    close: () => {
      for (const worker of workers) worker.terminate();
    },
  };
}
