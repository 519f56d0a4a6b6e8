/** One file with all of it, to be taken along. */
export function OwnData() {
  return (
    <>
      <p className="mb-4">
        Everything that you wrote or that is about you, in all of your clubs and on your bench, with your photos, as one
        JSON file.
      </p>
      <a href="/account/data" download className="button button-quiet">
        Download my data
      </a>
    </>
  );
}
