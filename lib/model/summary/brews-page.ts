import { z } from "zod";
import { BREW_STATES } from "../brew";
import { summaryFigure } from "./brew-summary";

export const MOST_OF_BREWS_PAGE = 40;

export const brewsQuery = z.strictObject({
  after: z
    .guid("after is what the page before gave as “next”")
    .optional()
    .meta({ description: "What the page before gave as next." }),
  limit: z.coerce
    .number({ error: `limit is a number from 1 to ${String(MOST_OF_BREWS_PAGE)}` })
    .int()
    .min(1)
    .max(MOST_OF_BREWS_PAGE)
    .default(MOST_OF_BREWS_PAGE)
    .meta({ description: "How many at most." }),
});
export type BrewsQuery = z.output<typeof brewsQuery>;

const toldBrew = z.strictObject({
  id: z.string(),
  beer: z.string(),
  recipe: z.string(),
  revision: z.int(),
  sharedBrew: z.string().nullable().meta({ description: "Identifier of the shared brew that it is of." }),
  brewer: z.string().meta({ description: "Name, as the club's pages show it." }),
  kettle: z.string(),
  kettleKind: z.string().meta({ description: "The vessel that it was mashed in: basket, bag or tun." }),
  state: z.enum(BREW_STATES),
  begun: z.string().nullable().meta({ description: "ISO 8601 in UTC." }),
  figures: z
    .array(summaryFigure)
    .nullable()
    .meta({ description: "null while they are being worked out; ask again a little later." }),
});

/** Brews of a club, in the order of their identifiers. */
export const brewsPage = z.strictObject({
  brews: z.array(toldBrew),
  next: z.string().nullable().meta({ description: "For the next page; null where this is the last." }),
});
export type BrewsPage = z.output<typeof brewsPage>;
