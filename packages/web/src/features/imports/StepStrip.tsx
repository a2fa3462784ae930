const steps = ['File', 'Columns', 'Rows', 'Written'] as const;

/** One of the steps, by its name. */
export type Step = (typeof steps)[number];

/** How far an import is. */
export function StepStrip({ at }: { readonly at: Step }) {
  return (
    <ol className="imp-steps" aria-label="Steps of the import">
      {steps.map((step, i) => (
        <li key={step} aria-current={step === at ? 'step' : undefined}>
          <span className="imp-step-number">{i + 1}</span> {step}
        </li>
      ))}
    </ol>
  );
}

/** The heading of a step; whoever comes to it from the one before goes on from there. */
export function StepTitle({ children }: { readonly children: string }) {
  return (
    <h2 className="imp-title" tabIndex={-1} ref={focused}>
      {children}
    </h2>
  );
}

function focused(title: HTMLElement | null): void {
  title?.focus();
}
