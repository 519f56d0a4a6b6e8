"use client";

import dynamic from "next/dynamic";
import { useState, type ReactElement } from "react";

// Solvers come when somebody asks for them.
const TargetPanel = dynamic(() => import("./target-panel"));

export function TargetSection(): ReactElement {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="no-print" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="cursor-pointer py-2 text-sm">A target instead of an amount</summary>
      {isOpen ? <TargetPanel /> : null}
    </details>
  );
}
