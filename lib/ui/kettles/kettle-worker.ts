import type { FromDesk, ToDesk } from "./desk-messages";
import { KettleDesk } from "./kettle-desk";

/** What a worker knows of itself; the page's own types say nothing of workers. */
interface WorkerScope {
  postMessage: (message: FromDesk) => void;
  onmessage: ((event: MessageEvent<ToDesk>) => void) | null;
}

const scope = globalThis as unknown as WorkerScope;

const desk = new KettleDesk({
  post: (message) => {
    scope.postMessage(message);
  },
  soon: (task) => {
    setTimeout(task, 0);
  },
  now: () => performance.now(),
});

scope.onmessage = ({ data }) => {
  desk.receive(data);
};
