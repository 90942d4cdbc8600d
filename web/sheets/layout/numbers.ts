/** Millimetres as they are read off a comb: halves are kept, since a slice is one to three millimetres deep. */
export const millimetres = (value: number) => String(Math.round(value * 2) / 2)

const inWords = new Intl.DateTimeFormat("en-GB", { dateStyle: "long", timeZone: "UTC" })

/** "2026-03-14" as "14 March 2026". */
export const dateInWords = (date: string) => inWords.format(new Date(`${date}T00:00:00Z`))
