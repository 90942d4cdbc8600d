/** The level scale 1 to 10. Common practice, no source. */
export type LevelRow = { level: number; name: string }

export const levels: readonly LevelRow[] = [
  { level: 1, name: "black" },
  { level: 2, name: "darkest brown" },
  { level: 3, name: "dark brown" },
  { level: 4, name: "medium brown" },
  { level: 5, name: "light brown" },
  { level: 6, name: "dark blonde" },
  { level: 7, name: "medium blonde" },
  { level: 8, name: "light blonde" },
  { level: 9, name: "very light blonde" },
  { level: 10, name: "lightest blonde" },
]
