import { createRoot } from "react-dom/client";
import { browserClock } from "../store/clock";
import { openDayDatabase } from "../store/database";
import { DaySession } from "../sync/day-session";
import { beginPage } from "../sync/begin-page";
import { fetchSheet, postDelivery } from "../sync/http";
import { announceChange, DAY_PAGES, keepInStep, oneSender } from "../sync/keep-in-step";
import { listenToServer } from "../sync/listen-to-server";
import { sendPhotos } from "../sync/send-photos";
import { startWorker } from "../worker/start-worker";
import { DayApp } from "./day-app";
import { DAY_WORDS } from "./day-words";
import { NoAddress } from "./nothing-kept";

/** What stands behind /brew-day/ in the address: the club and the brew. */
function place(pathname: string): { readonly space: string; readonly brewId: string } | null {
  const [, , space, brewId] = pathname.split("/").map(decodeURIComponent);
  return space === undefined || brewId === undefined || brewId === "" ? null : { space, brewId };
}

async function begin(element: HTMLElement): Promise<void> {
  const at = place(location.pathname);
  if (at === null) {
    createRoot(element).render(<NoAddress words={DAY_WORDS} />);
    return;
  }
  const database = await openDayDatabase();
  const session = new DaySession({
    ...at,
    database,
    clock: browserClock(),
    post: postDelivery,
    fetchSheet,
    announce: () => announceChange(DAY_PAGES),
    alone: (work) => oneSender(DAY_PAGES, work),
    sendPhotos: (userId) => sendPhotos(database, userId),
  });
  await beginPage(session, () => {
    createRoot(element).render(<DayApp session={session} database={database} />);
    keepInStep(session, DAY_PAGES);
    listenToServer(session);
    void startWorker("/brew-day/");
  });
}

const element = document.getElementById("day");
if (element !== null) void begin(element);
