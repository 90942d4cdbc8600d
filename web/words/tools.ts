import type { Range } from "../../geometry/hair/tradeFigures"

/** The forms of a counted thing, by the plural rules of a language; "#" stands for the count. */
export type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }

/** How a language writes numbers, lists, counts and days. Messages are functions of these and of their data. */
export type Tools = ReturnType<typeof toolsOf>

const noBreak = " "

/** What a region puts behind a metric figure, by how its language writes a number; lengths in mm. */
export type UnitsBeside = (said: (value: number, least: number, most: number) => string) => {
  /** As a ruler shows it: finer the shorter it is. */
  inches(mm: number): string
  /** Two sides of a sheet of foil. */
  inchesSquare(widthMm: number, lengthMm: number): string
  /** A length of hair is told to half an inch. */
  halfInches(mm: number): string
  ounces(lowG: number, highG: number): string
  fahrenheit(celsius: number): string
}

const none = () => ""
const metricAlone: UnitsBeside = () => ({
  inches: none,
  inchesSquare: none,
  halfInches: none,
  ounces: none,
  fahrenheit: none,
})

/** The tools of a language, by its BCP 47 tag. */
export function toolsOf(locale: string, unitsBeside = metricAlone) {
  const number = (value: number, least: number, most: number) => formatOf(locale, least, most).format(value)
  const whole = (value: number) => number(Math.round(value) || 0, 0, 0)
  const grams = (value: number) => (value < 9.95 ? number(value, 1, 1) : whole(value))
  const gramsRange = ({ low, high }: Range) => `${spread(grams(low), grams(high))}${noBreak}g`
  const withUnit = (value: number, decimals: number, unit: string) =>
    `${number(Number(value.toFixed(decimals)) || 0, 0, decimals)}${noBreak}${unit}`
  const beside = unitsBeside(number)
  const area = (cm2: number) => (cm2 < 99.5 ? number(cm2, 1, 1) : whole(cm2))
  const spread = (low: string, high: string) => (low === high ? low : `${low}–${high}`)
  const plurals = new Intl.PluralRules(locale)
  const ordinals = new Intl.PluralRules(locale, { type: "ordinal" })
  const lists = { and: listOf(locale, "conjunction"), or: listOf(locale, "disjunction") }
  const day = (iso: string, options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(locale, { timeZone: "UTC", ...options }).format(
      new Date(`${iso.slice(0, 10)}T12:00:00Z`),
    )

  return {
    locale,
    /** A whole number. */
    whole,
    /** A number as it is said in a sentence: no idle zeros, never -0; a dash where there is none. */
    number: (value: number, decimals = 2) =>
      Number.isFinite(value) ? number(Number(value.toFixed(decimals)) || 0, 0, decimals) : "–",
    /** A number with just so many decimals. */
    fixed: (value: number, decimals: number) => number(value, decimals, decimals),
    percent: (share: number) =>
      new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 0 }).format(share),
    /** Grams: tenths below 10, whole ones above; the bare figure. */
    gramsNumber: grams,
    grams: (value: number) => `${grams(value)}${noBreak}g`,
    gramsRange,
    mm: (value: number, decimals = 0) => withUnit(value, decimals, "mm"),
    cm: (value: number, decimals = 0) => withUnit(value, decimals, "cm"),
    area: (cm2: number) => `${area(cm2)}${noBreak}cm²`,
    /** The same in a running sentence, where there is room for the units that the reader thinks in. */
    told: {
      mm: (value: number, decimals = 0) => `${withUnit(value, decimals, "mm")}${beside.inches(value)}`,
      cm: (value: number, decimals = 0) =>
        `${withUnit(value, decimals, "cm")}${beside.halfInches(10 * value)}`,
      /** Width and length of a foil. */
      size: (widthMm: number, lengthMm: number) =>
        `${whole(widthMm)} × ${withUnit(lengthMm, 0, "mm")}${beside.inchesSquare(widthMm, lengthMm)}`,
      grams: (value: number, decimals?: number) =>
        decimals === undefined
          ? `${grams(value)}${noBreak}g${beside.ounces(value, value)}`
          : `${withUnit(value, decimals, "g")}${beside.ounces(value, value)}`,
      gramsRange: (range: Range) => `${gramsRange(range)}${beside.ounces(range.low, range.high)}`,
      celsius: (value: number) => `${withUnit(value, 2, "°C")}${beside.fahrenheit(value)}`,
    },
    minutes: (value: number, decimals = 0) => withUnit(value, decimals, "min"),
    /** Words and whole groups of them as a region of the language spells them; as they stand where it has no other way. */
    spelled: <T>(words: T): T => words,
    /** Minutes and seconds as a clock shows them: "12:05". */
    clock: (ms: number) => {
      const seconds = Math.floor(ms / 1000)
      return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`
    },
    /** A length of time in its largest unit: seconds, minutes or hours. */
    duration: (ms: number) => durationOf(locale, ms),
    /** A moment as a clock on the wall shows it, with the seconds. */
    time: (wallMs: number) => new Intl.DateTimeFormat(locale, { timeStyle: "medium" }).format(wallMs),
    /** The day of a moment on this device. */
    day: (wallMs: number) => new Intl.DateTimeFormat(locale, { dateStyle: "medium" }).format(wallMs),
    /** A moment of this device's own day. */
    dayAndTime: (wallMs: number) =>
      new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeStyle: "short" }).format(wallMs),
    /** Numbers in their order, three and more that follow each other as one run. */
    runs: (numbers: readonly number[], run: (from: number, to: number) => string) =>
      runsOf(numbers)
        .map(([from, to]) => (to - from > 1 ? run(from, to) : from === to ? `${from}` : `${from}, ${to}`))
        .join(", "),
    minuteRange: (low: number, high: number) => `${spread(whole(low), whole(high))}${noBreak}min`,
    hairsRange: ({ low, high }: Range) => spread(whole(twoFigures(low)), whole(twoFigures(high))),
    /** Two figures with a dash between, one where they are the same. */
    spread,
    /** A count of hairs to two figures: no more are known. */
    hairs: (value: number) => whole(twoFigures(value)),
    /** A counted thing: the form for its count, with the count for "#"; half a thing is counted too. */
    count: (count: number, forms: Forms) =>
      (forms[plurals.select(count)] ?? forms.other).replaceAll("#", number(count, 0, 2)),
    /** A place in an order, "1st", by the forms of the language; "#" stands for the number. */
    ordinal: (place: number, forms: Forms) =>
      (forms[ordinals.select(place)] ?? forms.other).replaceAll("#", whole(place)),
    /** "a, b and c" */
    and: (items: readonly string[]) => lists.and.format(items),
    /** "a, b or c" */
    or: (items: readonly string[]) => lists.or.format(items),
    /** Words that begin a sentence or a line. */
    capital: (text: string) => text.slice(0, 1).toLocaleUpperCase(locale) + text.slice(1),
    /** A day, "YYYY-MM-DD", as it is written: 9 March 2026. */
    date: (iso: string) => day(iso, { day: "numeric", month: "long", year: "numeric" }),
    /** From one day to another: 6–20 April 2026. */
    days: (from: string, to: string) =>
      new Intl.DateTimeFormat(locale, {
        timeZone: "UTC",
        day: "numeric",
        month: "long",
        year: "numeric",
      }).formatRange(new Date(`${from}T12:00:00Z`), new Date(`${to}T12:00:00Z`)),
    /** A day with the name of its weekday: Monday 9 March. */
    weekday: (iso: string) => day(iso, { weekday: "long", day: "numeric", month: "long" }),
  }
}

const formats = new Map<string, Intl.NumberFormat>()

/** Formats cost more to make than to use. */
function formatOf(locale: string, least: number, most: number): Intl.NumberFormat {
  const key = `${locale} ${least} ${most}`
  const known =
    formats.get(key) ??
    new Intl.NumberFormat(locale, { minimumFractionDigits: least, maximumFractionDigits: most })
  formats.set(key, known)
  return known
}

const listOf = (locale: string, type: Intl.ListFormatType) =>
  new Intl.ListFormat(locale, { style: "long", type })

function durationOf(locale: string, ms: number): string {
  const minutes = ms / 60_000
  const [value, unit, decimals] =
    minutes < 1
      ? [ms / 1000, "second", 0]
      : minutes < 60
        ? [minutes, "minute", 0]
        : ([minutes / 60, "hour", 1] as const)
  return new Intl.NumberFormat(locale, {
    style: "unit",
    unit: `${unit}`,
    unitDisplay: "long",
    maximumFractionDigits: Number(decimals),
  }).format(Number(value))
}

function runsOf(numbers: readonly number[]): [from: number, to: number][] {
  const runs: [number, number][] = []
  for (const number of numbers) {
    const last = runs.at(-1)
    if (last && last[1] === number - 1) last[1] = number
    else runs.push([number, number])
  }
  return runs
}

function twoFigures(count: number): number {
  const step = 10 ** Math.max(1, Math.floor(Math.log10(Math.max(count, 1))) - 1)
  return Math.round(count / step) * step
}
