/** Millimetres as they are read off a comb: halves are kept, since a slice is one to three millimetres deep. */
export const millimetres = (value: number) => String(Math.round(value * 2) / 2)

/** "2026-03-14" in words. */
export function dateInWords(date: string): string {
  const [year, month, day] = date.split("-").map(Number)
  return `${day} ${months[month - 1]} ${year}`
}

const months = (
  "January February March April May June July " + "August September October November December"
).split(" ")
