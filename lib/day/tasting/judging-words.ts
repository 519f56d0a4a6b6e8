import type { KeptPageWords } from "../screen/nothing-kept";

/** What judging says where there are no sheets to show. */
export const JUDGING_WORDS: KeptPageWords = {
  className: "judging",
  heading: "Judging",
  noAddress: ["No tasting here", "This address names no tasting. Open the tasting in your club and choose “Judge”."],
  signedOut: "You are not signed in. Sign in once with a network; after that your sheets work without one.",
  notFound: "There is no such tasting here, or you do not judge at it.",
  away:
    "The server cannot be reached, and this tasting was not opened on this device before. Open it once where there is a " +
    "network; after that it works without one.",
};
