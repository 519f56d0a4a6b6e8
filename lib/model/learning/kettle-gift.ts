import { z } from "zod";

/** The form by which an owner gives what a kettle has told to other clubs, or takes it back. */
export const kettleGift = z.strictObject({
  isGiven: z.enum(["yes", "no"], { error: "Whether it is given is yes or no" }).transform((answer) => answer === "yes"),
});
