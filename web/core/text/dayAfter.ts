const dayMs = 86_400_000

/** The day so many days after one of the calendar, "2026-03-09"; before it where they are below 0. */
export const dayAfter = (day: string, days: number) =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10)
