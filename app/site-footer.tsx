/** The caution that belongs to every page. */
export function SiteFooter() {
  return (
    <footer className="no-print border-t border-rule">
      <div className="mx-auto max-w-[76rem] px-4 py-5 text-sm text-muted">
        <p>
          Brewing means hot liquor, mains electricity near water, pressure and strong cleaners; local codes and licensed
          trades come before anything computed here. Beer is alcohol: keep to the age limit of your country, share with
          care, and do not drive after tasting.
        </p>
      </div>
    </footer>
  );
}
