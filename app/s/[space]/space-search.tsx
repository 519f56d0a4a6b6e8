/** Words to look for in the whole space, from any of its pages. */
export function SpaceSearch({ slug, name }: { readonly slug: string; readonly name: string }) {
  return (
    <form role="search" action={`/s/${slug}/search`} className="flex items-center gap-2 py-1">
      <label htmlFor="space-search" className="sr-only">
        Search {name}
      </label>
      <input id="space-search" type="search" name="q" maxLength={200} className="input max-w-48" placeholder="Search" />
      <button type="submit" className="button button-quiet">
        Search
      </button>
    </form>
  );
}
