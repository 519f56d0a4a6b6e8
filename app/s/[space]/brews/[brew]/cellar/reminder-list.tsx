import type { Brew } from "@/lib/model/brew";
import { REMINDER_RULES, type Reminder } from "@/lib/model/cellar/reminders";
import { Notice } from "@/lib/ui/notice";
import { reminderWords } from "@/lib/ui/cellar/reminder-words";
import type { RecordReading } from "../use-delivery";
import { RestForm } from "./rest-form";

interface ReminderListProps {
  readonly brew: Pick<Brew, "id" | "mayWrite">;
  readonly reminders: readonly Reminder[];
  readonly record: RecordReading;
}

/** What the fermentation asks for: what is due first, with the rule behind it. */
export function ReminderList({ brew, reminders, record }: ReminderListProps) {
  if (reminders.length === 0) return null;
  return (
    <section aria-labelledby="reminders" className="mb-8">
      <h2 id="reminders">To be done</h2>
      <ul className="mt-2 flex flex-col gap-3">
        {reminders.map((reminder) => (
          <li key={reminder.kind}>
            <Notice kind={reminder.state === "due" ? "attention" : "plain"}>
              <p className={reminder.state === "due" ? "font-semibold" : undefined}>{reminderWords(reminder)}</p>
              <p className="text-sm text-muted">{REMINDER_RULES[reminder.kind]}</p>
              {brew.mayWrite && reminder.kind === "diacetyl rest" && reminder.state === "due" ? (
                <RestForm brewId={brew.id} record={record} />
              ) : null}
            </Notice>
          </li>
        ))}
      </ul>
    </section>
  );
}
