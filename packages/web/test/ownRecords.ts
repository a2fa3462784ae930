import type { YardServer } from './yardServer.ts';

/** Makes a record and has its id. */
export async function made(yard: YardServer, draft: object): Promise<string> {
  return (await yard.ask<{ id: string }>('POST', '/api/records', draft)).id;
}

/** A small yard of somebody’s own: two tractors, a coupler, two implements, a drive shaft. */
export async function ownYard(yard: YardServer): Promise<void> {
  const measured = (readings: Readonly<Record<string, string>>) =>
    Object.entries(readings).map(([field, value]) => ({
      field,
      leaf: { value, plusMinus: '1/16 in' },
      grade: 'measured',
    }));
  for (const name of ['Brook 30', 'Brook 50'])
    await made(yard, {
      kind: 'tractor',
      name,
      fields: { category: '1' },
      readings: measured({ lowerBallBore: '0.88 in', upperBallBore: '0.76 in' }),
    });
  await made(yard, { kind: 'coupler', name: 'Brook frame', fields: { kind: 'uFrame', category: '1' } });
  await made(yard, {
    kind: 'implement',
    name: 'Brook rake',
    fields: { category: '1', mounting: 'threePoint' },
    readings: measured({
      mastHeight: '18 in',
      shoulderSpan: '26 7/8 in',
      standOut: '2 1/2 in',
      lowerPinDiameter: '1.1 in',
    }),
  });
  await made(yard, { kind: 'implement', name: 'Brook tiller', fields: { category: '1', driven: true } });
  await made(yard, {
    kind: 'shaft',
    name: 'Brook shaft',
    fields: { fits: ['Brook tiller'] },
    readings: measured({ closedLength: '40 in' }),
  });
}
