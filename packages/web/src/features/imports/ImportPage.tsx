import { YardFrame } from '../../app/server/YardFrame.tsx';

export function ImportPage({ id }: { readonly id: string | null }) {
  return (
    <YardFrame at="#import" title="Import a sheet">
      <p className="pad">Not there yet.</p>
    </YardFrame>
  );
}
