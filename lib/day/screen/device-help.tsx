import type { ReactElement } from "react";
import type { Alarms } from "../alarm/use-alarms";
import { useWakeLock, type WakeLockState } from "../alarm/use-wake-lock";
import { useDay } from "./day-context";
import { NotificationHelp } from "./notification-help";
import { StorageHelp } from "./storage-help";
import { UpdateHelp } from "./update-help";

const LOCK_WORDS: Readonly<Record<WakeLockState, string>> = {
  held: "The screen stays on while this page is seen.",
  "not held": "The screen may go dark; a low battery or a saving mode prevents it from staying on.",
  "not offered": "This browser cannot keep the screen on: set the phone to keep it on today.",
};

/** What of the alarms works on this device, said plainly, with a test to hear it. */
export function DeviceHelp({ sounding }: { readonly sounding: Alarms }): ReactElement {
  const { day } = useDay();
  const lock = useWakeLock(day.startedAt !== null && day.next !== null);
  return (
    <section aria-labelledby="this-device" className="no-print">
      <h2 id="this-device">This device</h2>
      <ul className="mt-2 flex flex-col gap-2">
        <li>
          {sounding.sound === "on"
            ? "Alarms sound on this page."
            : "Alarms are silent until you have tested them once."}{" "}
          <button type="button" className="button button-quiet day-button-small" onClick={() => void sounding.test()}>
            Test the alarm
          </button>
        </li>
        <li>{"vibrate" in navigator ? "Alarms vibrate as well." : "This browser does not vibrate."}</li>
        <li>{LOCK_WORDS[lock]}</li>
        <NotificationHelp />
        <StorageHelp />
        <UpdateHelp />
      </ul>
      <p className="mt-3 text-muted">
        A locked phone may stop this page. For what must not be missed, set the phone’s own timer too.
      </p>
    </section>
  );
}
