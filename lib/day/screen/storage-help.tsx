import { useEffect, useState, type ReactElement } from "react";

/** Whether the browser promises to keep what is on this device when it runs short of room. */
export function StorageHelp(): ReactElement {
  const [isLasting, setLasting] = useState<boolean | null>(null);
  useEffect(() => {
    if (!("storage" in navigator)) return;
    void navigator.storage
      .persisted()
      .then((already) => already || navigator.storage.persist())
      .then(setLasting)
      .catch(() => setLasting(false));
  }, []);
  if (isLasting === true) return <li>What is kept here stays until it is on the server.</li>;
  return (
    <li>
      The browser may clear what is kept here when it runs short of room, or after a week without use: put this page on
      the home screen, and come back to a network before that.
    </li>
  );
}
