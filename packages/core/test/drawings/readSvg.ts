/** The dimension line of a misfit as it stands in the SVG. */
export interface MeasuredMisfit {
  readonly finding: string;
  readonly sides: number;
  /** True millimetres to one unit of the viewBox. */
  readonly mmPerUnit: number;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Length of the line × millimetres per unit × sides. */
  readonly total: number;
}

const group = /<g data-finding="([^"]+)" data-sides="([12])" data-mm-per-unit="([^"]+)">(.*)<\/g>/g;
const ends = /<line[^>]* data-ends="" x1="([^"]+)" y1="([^"]+)" x2="([^"]+)" y2="([^"]+)"\/>/;

/** Measures every misfit dimension in an SVG text, as somebody with a ruler would. */
export function misfitsIn(svg: string): MeasuredMisfit[] {
  return [...svg.matchAll(group)].map(([, finding = '', sides, mmPerUnit, content = '']) => {
    const line = ends.exec(content);
    if (line === null) throw new Error(`a misfit of ${finding} without a dimension line`);
    const [x1, y1, x2, y2] = line.slice(1).map(Number) as [number, number, number, number];
    const length = Math.hypot(x2 - x1, y2 - y1);
    return {
      finding,
      sides: Number(sides),
      mmPerUnit: Number(mmPerUnit),
      from: [x1, -y1],
      to: [x2, -y2],
      total: length * Number(mmPerUnit) * Number(sides),
    };
  });
}
