import { fieldRules } from '@hitchwright/core/records';
import { couplerKinds } from '@hitchwright/core/tables';
import { groupsOf, pathsOf } from '../src/features/dimensions/groups.ts';
import { checkOf } from './sample.ts';
import { expect, site, test } from './person.ts';

/** A second row is one of lower pins without bushings: it has no upper pin of its own. */
const notOfSecondRow = /^implement\.secondRow\.(lowerBushing|upper|mast|clevis)/;

test('every field of a setup is asked somewhere, and none twice', () => {
  const machines = (['implement', 'tractor', 'coupler'] as const).map((machine) =>
    couplerKinds.map((kind) => groupsOf(machine, kind).flatMap(pathsOf)),
  );
  const asked = new Set(machines.flat(2));
  const fields = [...fieldRules.keys()].filter((path) => !notOfSecondRow.test(path));
  expect(fields.filter((path) => !asked.has(path))).toEqual([]);
  for (const paths of machines.flat()) expect(paths.length).toBe(new Set(paths).size);
});

test('masses, angles and counts are typed in their own units', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', 'U-28')));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  const mass = page.getByRole('group', { name: /^mass/ });
  await mass.getByLabel('mass', { exact: true }).fill('700');
  await expect(mass).toContainText('= 700 lb (318 kg)');
  await page
    .getByRole('group', { name: 'Whose dimensions' })
    .getByRole('button', { name: /tractor/ })
    .click();
  await page.getByText('Lift arms and rods').click();
  const angle = page.getByRole('group', { name: /^lift arm angle at its lowest/ });
  await angle.getByLabel('lift arm angle at its lowest', { exact: true }).fill('-20');
  await expect(angle).toContainText('= −20');
  await page.getByText('Lift cylinder', { exact: true }).click();
  await page.getByLabel('lift cylinders that push together').selectOption('2');
  await expect(page.getByText('can’t be read')).toHaveCount(0);
});

test('a figure without a unit keeps its meaning when the units are switched', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', 'U-28')));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  const mass = page.getByRole('group', { name: /^mass/ });
  await mass.getByLabel('mass', { exact: true }).fill('700');
  await expect(mass).toContainText('= 700 lb (318 kg)');
  await page.getByRole('button', { name: /^Units/ }).click();
  await page.getByLabel('carrying height', { exact: true }).fill('600');
  await expect(mass).toContainText('= 318 kg (700 lb)');
});
