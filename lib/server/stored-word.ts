import "server-only";

/** The word in a text column that the database holds to a few words. */
export function storedWord<const W extends string>(words: readonly W[], column: string): W {
  const word = words.find((one) => one === column);
  if (word === undefined) throw new Error(`a column has the unknown word “${column}”`);
  return word;
}
