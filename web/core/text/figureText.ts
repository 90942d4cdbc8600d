import type { Range } from "../../../geometry/hair/tradeFigures"

/** Figures as a person reads them: few digits, a range where there is one, never NaN or -0. */

const plain = new Intl.NumberFormat("en-GB", { maximumFractionDigits: 0 })
const tenths = new Intl.NumberFormat("en-GB", { minimumFractionDigits: 1, maximumFractionDigits: 1 })

/** Grams: tenths below 10, whole ones above. */
export const gramsNumber = (grams: number) => (grams < 9.95 ? tenths.format(grams) : plain.format(grams))
export const gramsText = (grams: number) => `${gramsNumber(grams)} g`
export const gramsRange = ({ low, high }: Range) => `${gramsNumber(low)}–${gramsNumber(high)} g`

export const mmText = (mm: number) => `${plain.format(mm)} mm`
export const areaText = (cm2: number) => `${cm2 < 99.5 ? tenths.format(cm2) : plain.format(cm2)} cm²`
export const cmText = (cm: number) => `${plain.format(cm)} cm`

/** A count of hairs to two figures: no more are known. */
export function hairsNumber(hairs: number) {
  const step = 10 ** Math.max(1, Math.floor(Math.log10(Math.max(hairs, 1))) - 1)
  return plain.format(Math.round(hairs / step) * step)
}
export const hairsRangeText = ({ low, high }: Range) => `${hairsNumber(low)}–${hairsNumber(high)}`

export const countText = (count: number, one: string, many = `${one}s`) =>
  `${plain.format(count)} ${count === 1 ? one : many}`
