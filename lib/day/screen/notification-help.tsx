import { useState, type ReactElement } from "react";
import { subscribeToPush } from "../worker/subscribe";

/** Notifications for a page that is not seen; where the club's server has keys for it, also for a phone that is locked. */
export function NotificationHelp(): ReactElement {
  // Asked once: the browser looks it up outside of the page each time.
  const [permission, setPermission] = useState(() =>
    "Notification" in window ? Notification.permission : ("not offered" as const),
  );
  const [push, setPush] = useState<"unknown" | "on" | "off">("unknown");

  async function ask(): Promise<void> {
    const answer = await Notification.requestPermission();
    setPermission(answer);
    if (answer === "granted") setPush((await subscribeToPush()) ? "on" : "off");
  }

  if (permission === "not offered") return <li>This browser shows no notifications.</li>;
  if (permission === "denied") {
    return (
      <li>Notifications are refused in the settings of this browser; alarms sound only while this page is open.</li>
    );
  }
  if (permission === "granted" && push !== "off") return <li>Alarms are shown as notifications too.</li>;
  if (permission === "granted") {
    return <li>Alarms are shown as notifications while this page is open; the server sends none to this device.</li>;
  }
  return (
    <li>
      Alarms can be shown as notifications too.{" "}
      <button type="button" className="button button-quiet day-button-small" onClick={() => void ask()}>
        Allow notifications
      </button>
    </li>
  );
}
