import { useEffect, useRef, useState } from "react";
import type { Alarm } from "./due-alarms";
import { createBell, type Bell } from "./ring";

/** Whether sound is let through on this device; it is not before somebody has touched the page. */
export type SoundState = "off" | "on";

export interface Alarms {
  readonly sound: SoundState;
  /** Lets sound through and rings once. */
  readonly test: () => Promise<void>;
}

const TEST_MS = 1400;

/** Rings while an alarm is due, on this page; a page that is not seen also shows a notification, where it may. */
export function useAlarms(alarms: readonly Alarm[]): Alarms {
  const bell = useRef<Bell | null>(null);
  const [sound, setSound] = useState<SoundState>("off");
  const due = alarms.filter(({ isDue }) => isDue);
  const isRinging = due.length > 0;
  const dueKey = due.map(({ timer, dueAt }) => `${timer} ${String(dueAt)}`).join(",");

  useEffect(() => {
    bell.current ??= createBell();
    if (isRinging) bell.current.start();
    else bell.current.stop();
    return () => bell.current?.stop();
  }, [isRinging]);

  useEffect(() => {
    if (dueKey !== "") void notify(due);
    // The list is made anew with each drawing; the key changes only with what is due.
  }, [dueKey]);

  async function test(): Promise<void> {
    bell.current ??= createBell();
    setSound((await bell.current.unlock()) ? "on" : "off");
    bell.current.start();
    setTimeout(() => {
      if (!isRinging) bell.current?.stop();
    }, TEST_MS);
  }

  return { sound, test };
}

async function notify(due: readonly Alarm[]): Promise<void> {
  if (document.visibilityState === "visible" || !("Notification" in window)) return;
  if (Notification.permission !== "granted" || !("serviceWorker" in navigator)) return;
  const registration = await navigator.serviceWorker.getRegistration();
  for (const { label, timer } of due) {
    await registration?.showNotification(label, { tag: timer, requireInteraction: true, data: { url: location.href } });
  }
}
