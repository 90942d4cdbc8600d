import type { UnitsBeside } from "./tools"

/** NIST SP 811 (2008), appendix B.8: an inch is 25.4 mm exactly, an ounce 28.349 52 g. */
const mmPerInch = 25.4
const gPerOunce = 28.34952

const noBreak = "\u00a0"

/** What stands behind a metric figure for who thinks in inches, ounces and degrees Fahrenheit: " (10 in)". */
export const customaryBeside: UnitsBeside = (said) => {
  const beside = (text: string) => ` (${text})`
  return {
    /** As a ruler shows it: finer the shorter it is. */
    inches: (mm: number) => besideInches(mm, mm < 6.35 ? 32 : mm < mmPerInch ? 16 : 8),
    /** Two sides of a sheet of foil. */
    inchesSquare: (widthMm: number, lengthMm: number) =>
      beside(`${fraction(widthMm / mmPerInch, 8)} × ${fraction(lengthMm / mmPerInch, 8)}${noBreak}in`),
    /** A length of hair is told to half an inch. */
    halfInches: (mm: number) => besideInches(mm, 2),
    /** Hundredths below an ounce, tenths above. */
    ounces: (low: number, high: number) => {
      const [from, to] = [low, high].map((grams) => ounces(grams / gPerOunce))
      return high > 0 ? beside(`${from === to ? from : `${from}–${to}`}${noBreak}oz`) : ""
    },
    fahrenheit: (celsius: number) => beside(`${said((celsius * 9) / 5 + 32, 0, 0)}${noBreak}°F`),
  }

  function besideInches(mm: number, parts: number): string {
    const text = fraction(mm / mmPerInch, parts)
    return text === "0" ? "" : beside(`${text}${noBreak}in`)
  }

  function ounces(count: number): string {
    return count < 0.995 ? said(count, 0, 2) : said(count, 0, 1)
  }
}

/** A number to the nearest of so many parts, as it is read off a ruler: "3/8", "2 1/2". */
function fraction(value: number, parts: number): string {
  const [count, whole] = [Math.round(value * parts), Math.floor(Math.round(value * parts) / parts)]
  const rest = lowest(count - whole * parts, parts)
  if (rest === "") return `${whole}`
  return whole === 0 ? rest : `${whole}${noBreak}${rest}`
}

/** A fraction of a power of two in its lowest terms; nothing for none. */
function lowest(count: number, parts: number): string {
  if (count === 0) return ""
  return count % 2 === 0 ? lowest(count / 2, parts / 2) : `${count}/${parts}`
}
