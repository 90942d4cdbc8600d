/** What is toned with after rinsing; null, or no toning at all in a plan, while nobody has chosen. */
export type Toning = { toner: TonerChoice | null; rootShade: TonerChoice | null }

/** A product, and the developer it is mixed with: parts of it, by mass, to one of product; no volume where it takes none. */
export type TonerChoice = { product: string; developerVolume: number | null; parts: number }

export const newToning = (): Toning => ({ toner: null, rootShade: null })
