/** How many notices are not read yet; nothing where all are. */
export function Unread({ count }: { readonly count: number }) {
  if (count === 0) return null;
  return (
    <>
      <span aria-hidden className="count">
        {count}
      </span>
      <span className="sr-only">{` (${count} not read)`}</span>
    </>
  );
}
