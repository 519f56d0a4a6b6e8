import Link from "next/link";
import type { DueInCellar } from "@/lib/server/cellar/due";
import { reminderWords } from "@/lib/ui/cellar/reminder-words";
import { Notice } from "@/lib/ui/notice";

interface DueListProps {
  readonly home: string;
  readonly due: readonly DueInCellar[];
}

/** What the fermentations of the club ask for now. */
export function DueList({ home, due }: DueListProps) {
  if (due.length === 0) return null;
  return (
    <section aria-labelledby="due" className="mb-4">
      <Notice kind="attention">
        <h2 id="due">Due in the cellar</h2>
        <ul>
          {due.map(({ brewId, title, kettle, reminder }) => (
            <li key={`${brewId} ${reminder.kind}`}>
              <Link href={`${home}/brews/${brewId}/cellar`} className="target">
                {title} from {kettle}
              </Link>
              : {reminderWords(reminder)}
            </li>
          ))}
        </ul>
      </Notice>
    </section>
  );
}
