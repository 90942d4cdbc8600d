/** An inch is 25.4 mm by definition; tapes are marked in eighths. */
export const mmPerInch = 25.4
export const inchParts = 8

/** Inches as a tape reads them, to the nearest eighth: 21 1/2. */
export function writeInches(inches: number): string {
  const eighths = Math.round(inches * inchParts)
  const [whole, rest] = [Math.floor(eighths / inchParts), eighths % inchParts]
  if (rest === 0) return String(whole)
  const shared = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1
  const part = `${rest / shared}/${inchParts / shared}`
  return whole === 0 ? part : `${whole} ${part}`
}

const signs: Record<string, number> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
}

/** Inches typed as 21 1/2, 21-1/2, 21½, 21.5 or 21,5, with or without a mark for inches; NaN for anything else. */
export function readInches(text: string): number {
  const bare = text.trim().replace(/\s*(?:"|″|”|in|inch|inches)\.?$/i, "")
  const fraction = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*[/⁄]\s*([1-9]\d*)$/.exec(bare)
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3])
  const sign = /^(\d*)\s*([½¼¾⅛⅜⅝⅞])$/.exec(bare)
  if (sign) return Number(sign[1]) + signs[sign[2]]
  return /^\d+(?:[.,]\d+)?$/.test(bare) ? Number(bare.replace(",", ".")) : Number.NaN
}
