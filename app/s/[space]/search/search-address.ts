/** An address as Next gives it. */
export type SearchParams = Readonly<Record<string, string | string[] | undefined>>;

/** The text of one field as it stands in the address, for the form. */
export function typedIn(params: SearchParams, name: string): string {
  const value = params[name];
  return (Array.isArray(value) ? value[0] : value) ?? "";
}

/** The same search on another page. */
export function pageAddress(home: string, params: SearchParams, page: number): string {
  const kept = Object.keys(params).flatMap((name) => {
    const text = typedIn(params, name);
    return name === "page" || text === "" ? [] : [[name, text]];
  });
  return `${home}/search?${new URLSearchParams([...kept, ["page", String(page)]]).toString()}`;
}
