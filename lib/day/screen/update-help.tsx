import { useSyncExternalStore, type ReactElement } from "react";
import { applyUpdate, isUpdateReady, isWorking, onWorkerChange } from "../worker/start-worker";

/** Whether this page starts without a network, and whether a newer one waits. Nothing reloads by itself during a brew. */
export function UpdateHelp(): ReactElement {
  const ready = useSyncExternalStore(onWorkerChange, isUpdateReady);
  const working = useSyncExternalStore(onWorkerChange, isWorking);
  return (
    <>
      <li>
        {working
          ? "This page starts without a network."
          : "This page is not kept on the device yet; without a network it works only while it stays open."}
      </li>
      {ready ? (
        <li>
          A newer version is ready.{" "}
          <button type="button" className="button button-quiet day-button-small" onClick={applyUpdate}>
            Use it now
          </button>
        </li>
      ) : null}
    </>
  );
}
