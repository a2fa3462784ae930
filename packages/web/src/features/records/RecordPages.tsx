import type { Route } from '../../app/route.ts';
import { YardFrame } from '../../app/server/YardFrame.tsx';

export function RecordPages({
  route,
}: {
  readonly route: Extract<Route, { page: 'records' | 'record' | 'newRecord' }>;
}) {
  return (
    <YardFrame at="#records" title="Records of the yard">
      <p className="pad">{route.page}</p>
    </YardFrame>
  );
}
