import { Fragment, type ReactElement } from "react";
import type { MarkedPart } from "@/lib/model/search";

/** A text in which what was looked for is marked. It is text to the browser, whatever stands in it. */
export function MarkedText({ parts }: { readonly parts: readonly MarkedPart[] }): ReactElement {
  return (
    <>
      {parts.map(({ text, isMatch }, i) => (
        <Fragment key={i}>{isMatch ? <mark>{text}</mark> : text}</Fragment>
      ))}
    </>
  );
}
