/** Millimetres as they are read off a comb: halves are kept, since a slice is one to three millimetres deep. */
export const millimetres = (value: number) => String(Math.round(value * 2) / 2)

const inWords = new Intl.DateTimeFormat("en-GB", { dateStyle: "long", timeZone: "UTC" })

/** "2026-03-14" as "14 March 2026". */
export const dateInWords = (date: string) => inWords.format(new Date(`${date}T00:00:00Z`))

/** "2026-04-06" and "2026-05-04" as "6 April to 4 May 2026". */
export function daysInWords(from: string, to: string): string {
  const first = dateInWords(from)
  return `${from.slice(0, 4) === to.slice(0, 4) ? first.slice(0, -5) : first} to ${dateInWords(to)}`
}
