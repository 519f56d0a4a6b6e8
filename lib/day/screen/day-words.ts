import type { KeptPageWords } from "./nothing-kept";

/** What the brew day says where there is no sheet to show. */
export const DAY_WORDS: KeptPageWords = {
  className: "brew-day",
  heading: "Brew day",
  noAddress: ["No brew day here", "This address names no brew. Open the brew in your club and choose “Brew day”."],
  signedOut: "You are not signed in. Sign in once with a network; after that this brew day works without one.",
  notFound: "There is no such brew here, or it is not of a club of yours.",
  away:
    "The server cannot be reached, and this brew was not opened on this device before. Open it once where there is a " +
    "network; after that it works without one.",
};
