/** Migrations from here on run while servers of the version before are still answering. A release moves it on. */
export const SINCE = "20261202";
