import type { ReactElement } from "react";
import { useDay } from "./day-context";

/** Which brew, whose, on which kettle, and the way back to the club's pages. */
export function DayHeading(): ReactElement {
  const { brew, space, day } = useDay();
  // The server moves the brew on when it hears of the first step; here it is known before.
  const state = brew.state === "planned" && day.startedAt !== null ? "on the kettle" : brew.state;
  return (
    <header>
      <nav aria-label="Brew" className="local-nav no-print">
        <a href={`/s/${space}/brews/${brew.id}`}>Sheet and readings</a>
      </nav>
      <h1>{brew.title}</h1>
      <p className="text-muted">
        {brew.brewerName}, on {brew.equipmentName}, {state}
      </p>
      {brew.isDropped ? (
        <p className="notice notice-attention mt-2">This brew was dropped; it takes no entries.</p>
      ) : null}
    </header>
  );
}
