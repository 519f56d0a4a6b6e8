import "server-only";

/** Who the program is to the database where it works for no person: reminders, summaries, what is on its way. */
export const NOBODY = "00000000-0000-0000-0000-000000000000";
