/** Tens that a whole figure's last noughts stand for: never more than a tenth of the figure, so that 700 is good to ten and 30 to one. */
function wholeWorth(digits: string): number {
  const value = Number(digits);
  let worth = 1;
  while (value % (worth * 10) === 0 && worth * 10 <= value / 10) worth *= 10;
  return worth;
}

/** Decimals of an inch or foot that stand for a fraction: 26.5 is a half, 26.25 a quarter, 26.125 an eighth. */
const inchDecimals: Readonly<Record<string, number>> = {
  '5': 1 / 2,
  '25': 1 / 4,
  '75': 1 / 4,
  '125': 1 / 8,
  '375': 1 / 8,
  '625': 1 / 8,
  '875': 1 / 8,
};

/**
 * What one step of a figure's last digit is worth [the figure’s own unit]: 27 → 1, 680 → 10, 68.3 → 0.1, 26 3/8 → 1/8.
 * In inches and feet 26.5 is taken for a half, which is coarser.
 */
export function worthOf(digits: string, isInches: boolean): number {
  const [, bottom] = /\/(\d+)/.exec(digits) ?? [];
  if (bottom !== undefined) return 1 / Number(bottom);
  const glyph = /[¼-¾⅐-⅞]/.exec(digits)?.[0];
  if (glyph !== undefined) return 1 / Number(glyph.normalize('NFKC').split('⁄')[1]);
  const grouped = /^\d{1,3}([ .,]\d{3})+$/.test(digits);
  const [, decimals] = grouped ? [] : (/[.,](\d+)$/.exec(digits) ?? []);
  if (decimals === undefined) return wholeWorth(digits.replace(/\D/g, ''));
  return (isInches ? inchDecimals[decimals] : undefined) ?? 10 ** -decimals.length;
}
