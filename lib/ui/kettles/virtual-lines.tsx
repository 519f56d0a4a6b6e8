"use client";

import { useWindowVirtualizer } from "@tanstack/react-virtual";
import { useEffect, useLayoutEffect, useRef, useState, type ReactElement } from "react";
import { KettleLine, type KettleLinesProps } from "./kettle-line";

/** Height of a row before it is measured, px. */
const ROW_PX = 64;
const ROWS_BEYOND = 12;

/** Only the rows in view, of a table that scrolls with the page. Their places in the whole are told to screen readers. */
export function VirtualLines({ rows, onLook, sheetHref, preferences, questions }: KettleLinesProps): ReactElement {
  const body = useRef<HTMLTableSectionElement>(null);
  const [top, setTop] = useState(0);
  useLayoutEffect(() => {
    const place = (): void => {
      if (body.current !== null) setTop(body.current.getBoundingClientRect().top + window.scrollY);
    };
    place();
    window.addEventListener("resize", place);
    return () => {
      window.removeEventListener("resize", place);
    };
  }, []);
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: () => ROW_PX,
    getItemKey: (index) => rows[index]?.entry.key ?? index,
    overscan: ROWS_BEYOND,
    scrollMargin: top,
  });
  const items = virtual.getVirtualItems();
  const inView = items.map(({ index }) => rows[index]?.entry.key ?? "").join(" ");
  useEffect(() => {
    onLook(inView.split(" "));
  }, [inView, onLook]);
  const before = (items[0]?.start ?? top) - top;
  const after = virtual.getTotalSize() - ((items.at(-1)?.end ?? top) - top);
  return (
    <tbody role="rowgroup" ref={body}>
      <tr aria-hidden className="kettle-gap" style={{ height: before }} />
      {items.map(({ index, key }) => {
        const row = rows[index];
        return row === undefined ? null : (
          <KettleLine
            key={key}
            entry={row.entry}
            figures={row.figures}
            sheetHref={sheetHref(row.entry)}
            preferences={preferences}
            questions={questions}
            rowIndex={index + 2}
            dataIndex={index}
            measure={virtual.measureElement}
          />
        );
      })}
      <tr aria-hidden className="kettle-gap" style={{ height: Math.max(0, after) }} />
    </tbody>
  );
}
