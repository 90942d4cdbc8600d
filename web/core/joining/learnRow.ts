import type { FoilKind } from "../../../geometry/section/section"
import { levelScale } from "../../../presets/timing/lift"
import { timedFoilMin } from "../../../presets/timing/pace"
import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import { limits } from "../fields/limits"
import { foilKinds } from "../kinds/kindRecords"

/** What one salon passes on, a row each: a weighed foil or bowl, one look at a strand, the pace of one pair of hands. */
export type LearnRow =
  | {
      row: "weighing"
      kind: FoilKind | null
      foils: number
      hairG: number
      strandAreaCm2: number
      productG: number
    }
  | {
      row: "strand"
      /** Looks with the same number are of one strand. */
      strand: number
      onHeadPercent: number
      printedLowLevels: number
      printedHighLevels: number
      longestMin: number
      startLevel: number
      minutes: number
      level: number
    }
  | { row: "pace"; kind: FoilKind; foils: number; minutes: number; spreadMin: number }

export type RowName = LearnRow["row"]
export const rowNames = ["weighing", "strand", "pace"] as const satisfies readonly RowName[]

/** A column of numbers: its unit as the second line says it, and the numbers that can be. */
export type NumberColumn = { unit: string; low: number; high: number; isWhole?: true }

const { most } = calibrationFigures

/** All that is ever written or read: numbers and words of two short lists. Nothing here can name anybody. */
export const numberColumns = {
  foils: { unit: "foils", low: 1, high: most.foils, isWhole: true },
  hairG: { unit: "g", low: 0, high: most.hairG },
  strandAreaCm2: { unit: "cm2", low: 0, high: most.strandAreaCm2 },
  productG: { unit: "g", low: 0.01, high: most.productG },
  strand: { unit: "-", low: 1, high: 10_000, isWhole: true },
  onHeadPercent: { unit: "%", low: 0.1, high: 12 },
  printedLowLevels: { unit: "levels", low: 0, high: limits.liftLevels.high },
  printedHighLevels: { unit: "levels", low: 0.1, high: limits.liftLevels.high },
  longestMin: { unit: "min", low: limits.heldMin.low, high: limits.heldMin.high },
  startLevel: { unit: "level", low: levelScale.darkest, high: levelScale.lightest },
  minutes: { unit: "min", low: timedFoilMin.low, high: limits.heldMin.high },
  level: { unit: "level", low: levelScale.darkest, high: levelScale.lightest },
  spreadMin: { unit: "min", low: 0, high: limits.heldMin.high },
} satisfies Record<string, NumberColumn>

export type NumberColumnName = keyof typeof numberColumns
export const columns = ["row", "kind", ...(Object.keys(numberColumns) as NumberColumnName[])] as const
export type ColumnName = (typeof columns)[number]

export const unitOf = (column: ColumnName) =>
  column === "row" || column === "kind" ? "-" : numberColumns[column].unit

/** The numbers that a row of a name has; its other cells are empty. */
export const numbersOf: Readonly<Record<RowName, readonly NumberColumnName[]>> = {
  weighing: ["foils", "hairG", "strandAreaCm2", "productG"],
  strand: [
    "strand",
    "onHeadPercent",
    "printedLowLevels",
    "printedHighLevels",
    "longestMin",
    "startLevel",
    "minutes",
    "level",
  ],
  pace: ["foils", "minutes", "spreadMin"],
}

/** The kinds that a row may have in its second cell; a bowl that several kinds shared has none. */
export const kindsOf: Readonly<Record<RowName, readonly string[]>> = {
  weighing: [...foilKinds, ""],
  strand: [""],
  pace: foilKinds,
}

/** Rows as comma separated text: the columns, their units, then a row a line. Only what stands in the columns is written. */
export const writeRows = (rows: readonly LearnRow[]): string =>
  [
    columns.join(","),
    columns.map(unitOf).join(","),
    ...rows.map((row) => columns.map((column) => cellOf(row, column)).join(",")),
    "",
  ].join("\n")

function cellOf(row: LearnRow, column: ColumnName): string {
  if (column === "row") return row.row
  if (column === "kind") return row.row === "strand" ? "" : (row.kind ?? "")
  if (!numbersOf[row.row].includes(column)) return ""
  const value = (row as unknown as Record<NumberColumnName, number>)[column]
  return String(Number(value.toFixed(3)))
}
