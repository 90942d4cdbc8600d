/** The sheets of paper, by the names the command knows them by. */
export const sheetNames = ["placement", "technique", "take-home", "record"] as const
export type SheetName = (typeof sheetNames)[number]
