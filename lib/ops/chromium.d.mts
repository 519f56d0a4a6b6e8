/** The browser's program, installed if there is none. */
export function ensureChromium(): Promise<string>;
