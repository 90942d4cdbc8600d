/**
 * The level scale 1 to 10, what pigment shows when hair is lifted to a level, and the tone across from it on the
 * colour wheel. Common practice, no source; the pairs violet-yellow, blue-orange, green-red are taught everywhere.
 */
export type LevelRow = { level: number; name: string; pigment: string; neutraliser: string }

export const levels: readonly LevelRow[] = [
  { level: 1, name: "black", pigment: "dark red-brown", neutraliser: "green" },
  { level: 2, name: "darkest brown", pigment: "dark red-brown", neutraliser: "green" },
  { level: 3, name: "dark brown", pigment: "red-brown", neutraliser: "green" },
  { level: 4, name: "medium brown", pigment: "red-brown", neutraliser: "green" },
  { level: 5, name: "light brown", pigment: "red-orange", neutraliser: "blue-green" },
  { level: 6, name: "dark blonde", pigment: "orange", neutraliser: "blue" },
  { level: 7, name: "medium blonde", pigment: "yellow-orange", neutraliser: "blue-violet" },
  { level: 8, name: "light blonde", pigment: "yellow", neutraliser: "violet" },
  { level: 9, name: "very light blonde", pigment: "pale yellow", neutraliser: "violet" },
  { level: 10, name: "lightest blonde", pigment: "very pale yellow", neutraliser: "soft violet or pearl" },
]
