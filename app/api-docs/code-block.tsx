interface CodeBlockProps {
  readonly label: string;
  readonly children: string;
}

/** A piece of a script. It scrolls by itself where it is wider than a phone, so it can be reached by keyboard. */
export function CodeBlock({ label, children }: CodeBlockProps) {
  return (
    <pre
      role="region"
      aria-label={label}
      tabIndex={0}
      className="my-4 overflow-x-auto border border-rule p-3 font-mono text-sm"
    >
      <code>{children}</code>
    </pre>
  );
}
