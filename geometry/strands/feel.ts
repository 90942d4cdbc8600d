/** What a body feels like at a place of the head frame: its distance, mm, negative inside, and the way out, a unit vector. */
export type Feel = { mm: number; x: number; y: number; z: number }
