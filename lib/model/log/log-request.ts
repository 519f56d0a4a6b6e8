import { z } from "zod";
import { logEventInput } from "./log-event-input";

/** Entries of one form, which are stored together. */
export const logRequest = z.strictObject({ events: z.array(logEventInput).min(1).max(10) });
