import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Refusal } from './yard.ts';

/** What the server said is kept until something is changed; only what never reached it is asked again. */
const queries = new QueryClient({
  defaultOptions: {
    queries: { retry: (count, problem) => problem instanceof Refusal && problem.status === 0 && count < 2 },
  },
});

/** What is asked of the server below it is kept in one place for the whole visit. */
export function YardQueries({ children }: { readonly children: ReactNode }) {
  return <QueryClientProvider client={queries}>{children}</QueryClientProvider>;
}
