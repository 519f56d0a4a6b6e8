/** What previews of links are drawn at, everywhere. */
export const CARD_SIZE = { width: 1200, height: 630 } as const;
