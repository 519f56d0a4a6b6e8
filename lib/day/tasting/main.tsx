import { createRoot } from "react-dom/client";
import { browserClock } from "../store/clock";
import { openTastingDatabase } from "../store/tasting-database";
import { beginPage } from "../sync/begin-page";
import { fetchJudgeSheet, postSheets } from "../sync/http";
import { JudgingSession } from "../sync/judging-session";
import { announceChange, JUDGING_PAGES, keepInStep, oneSender } from "../sync/keep-in-step";
import { startWorker } from "../worker/start-worker";
import { JudgingApp } from "./judging-app";
import { NoAddress } from "../screen/nothing-kept";
import { JUDGING_WORDS } from "./judging-words";

/** What stands behind /judging/ in the address: the club and the tasting. */
function place(pathname: string): { readonly space: string; readonly tastingId: string } | null {
  const [, , space, tastingId] = pathname.split("/").map(decodeURIComponent);
  return space === undefined || tastingId === undefined || tastingId === "" ? null : { space, tastingId };
}

async function begin(element: HTMLElement): Promise<void> {
  const at = place(location.pathname);
  if (at === null) {
    createRoot(element).render(<NoAddress words={JUDGING_WORDS} />);
    return;
  }
  const session = new JudgingSession({
    ...at,
    database: await openTastingDatabase(),
    clock: browserClock(),
    post: postSheets,
    fetchSheet: fetchJudgeSheet,
    announce: () => announceChange(JUDGING_PAGES),
    alone: (work) => oneSender(JUDGING_PAGES, work),
  });
  await beginPage(session, () => {
    createRoot(element).render(<JudgingApp session={session} />);
    keepInStep(session, JUDGING_PAGES);
    void startWorker("/judging/");
  });
}

const element = document.getElementById("day");
if (element !== null) void begin(element);
