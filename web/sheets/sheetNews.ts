import type { SheetName } from "../../presets/sheets/sheetNames"
import type { Plan } from "../core/document/schema"
import type { Paper, Weight } from "./pens/page"
import type { SheetOptions } from "./setting/sheetOptions"

/** A sheet to be laid out. Words are no data: the worker fetches those of its language itself. */
export type SheetWanted = { name: SheetName; plan: Plan; options: Omit<SheetOptions, "words" | "onStep"> }

/** What is asked of the worker for sheets; `of` is the number of the question that laid the sheet out. */
export type SheetQuestion =
  | { ask: "sheet"; wanted: SheetWanted; fonts: Record<Weight, Uint8Array> }
  /** A page as SVG. */
  | { ask: "page"; of: number; page: number; prefix: string; label: string }
  /** All of its pages, for one document. */
  | { ask: "pages"; of: number }
  | { ask: "pdf"; of: number }

export type SheetAnswer =
  | { kind: "sheet"; papers: readonly Paper[] }
  | { kind: "svg"; svg: readonly string[] }
  | { kind: "pdf"; bytes: Uint8Array<ArrayBuffer> }
