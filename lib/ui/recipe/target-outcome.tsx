"use client";

import type { ReactElement } from "react";
import { DataTable } from "../data-table";
import { Notice } from "../notice";
import type { MetTarget, Proposal } from "./target-proposal";

/** The amounts that meet a target, before they are put in; or why none do. */
export function TargetOutcome(props: {
  readonly proposal: Proposal;
  readonly onPut: (met: MetTarget) => void;
}): ReactElement {
  const { proposal, onPut } = props;
  if (!proposal.ok) {
    return (
      <Notice kind="attention" live>
        <p>{proposal.message}</p>
      </Notice>
    );
  }
  return (
    <div role="status" className="flex flex-col gap-3">
      <DataTable
        caption="Amounts that meet the target"
        columns={[
          { id: "label", label: "Amount", cell: ({ label }) => label },
          { id: "before", label: "Now", isNumber: true, cell: ({ before }) => before },
          { id: "after", label: "Solved", isNumber: true, cell: ({ after }) => after },
        ]}
        records={proposal.changes}
        keyOf={({ label }) => label}
      />
      {proposal.remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
      <button
        type="button"
        className="button self-start"
        disabled={proposal.changes.length === 0}
        onClick={() => onPut(proposal)}
      >
        Put these in
      </button>
    </div>
  );
}
