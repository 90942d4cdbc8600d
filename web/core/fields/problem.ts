import type { HeadSide } from "../../../geometry/scalp/hairline"
import type { HairlineFault } from "../../../geometry/scalp/hairlineFault"
import type { HeadMeasureName } from "../../../geometry/scalp/headSize"
import type { LimitUnit, ListedThing } from "./limits"

/** What is wrong with a document: where, as "sections[2].depthMm.start" or "file", and what by a code with its data. */
export type Problem = ProblemCode & { readonly path: string }
export type ProblemCode = (Expected & { found: Found }) | FieldCode | FileCode | DrawingCode

/** What stands where something else should. */
export type Found =
  | { is: "missing" | "nothing" | "group" | "endless-number" }
  | { is: "text"; text: string }
  | { is: "number"; value: number }
  | { is: "truth"; value: boolean }
  | { is: "list"; length: number }

/** What a field must hold. */
export type Expected =
  | { code: "number"; low: number; high: number; unit: LimitUnit }
  | { code: "whole-number"; low: number; high: number }
  /** One of these words, written just so. */
  | { code: "choice"; choices: readonly string[] }
  | { code: "one-or-two" }
  | { code: "line"; most: number }
  | { code: "plain-line"; most: number }
  | { code: "lines"; most: number }
  | { code: "plain-lines"; most: number }
  | { code: "id" }
  | { code: "mix-letter" }
  | { code: "day" }
  | { code: "moment" }
  | { code: "point" }
  | { code: "coordinate"; reach: number }
  | { code: "list"; low: number; high: number; of: ListedThing }
  | { code: "group"; fields: readonly string[] }
  /** A group that says which of several kinds it is. */
  | { code: "kind"; of: KindedThing; kinds: readonly string[] }
  | { code: "chair-note" }
  | { code: "true-or-left-out" }
  | { code: "less-than-to" }
  | { code: "no-more-than-high" }
  | { code: "something-else" }

export type KindedThing = "section" | "head-size" | "parting-worn" | "technique-parting" | "tap"
export type DocumentName = "plan" | "technique" | "backup" | "start" | "card" | "client"

/** How fields must go together. */
export type FieldCode =
  | { code: "extra-field"; field: string; within: string; document: DocumentName }
  | { code: "taken"; value: string | number; firstPlace: number }
  | { code: "unknown-mix"; known: readonly string[]; mix: string }
  | { code: "twin-of-itself" }
  | { code: "twin-unknown"; twin: string }
  | { code: "twin-of-another"; id: string; twin: string; named: string | null }
  | { code: "pair-of-one"; pair: number; found: number }
  | { code: "pair-not-single" }
  | { code: "nothing-to-coat"; startMm: number; lengthCm: number }
  /** The roots would end where product begins, or before. */
  | { code: "no-roots"; startMm: number; toMm: number }
  /** The roots would go on minutes after the ends, and before them. */
  | { code: "roots-first-later"; afterMin: number }
  /** Hair ends, or product does, before its own mix begins. */
  | { code: "no-ends"; toMm: number; lengthCm: number }
  | { code: "one-mix-twice"; mix: string }
  | { code: "landmark-off-middle"; landmark: string }
  | { code: "landmark-twice"; landmark: string; firstPlace: number }
  | { code: "hairline"; fault: HairlineFault; side: HeadSide }
  | { code: "head-size"; measure: HeadMeasureName; mm: number; least: number; greatest: number }

/** Why a text is no document at all. */
export type FileCode =
  | { code: "too-large"; document: DocumentName; mostMb: number; foundMb: number }
  | { code: "empty"; document: DocumentName }
  | { code: "not-json"; document: DocumentName }
  | { code: "no-number"; field: string; word: string }
  | { code: "another-kind"; document: DocumentName; kind: string }
  | { code: "version"; known: number }
  | { code: "newer-version"; version: number; known: number }
  | { code: "more-like-these"; count: number }
  | { code: "damaged-link" }
  | { code: "newer-link" }
  | { code: "too-large-link" }
  | { code: "not-on-shelf" }

/** What makes a parting impossible to comb, or to divide the head by. */
export type DrawingCode = PartingFaultCode | DividerFaultCode
export type PartingFaultCode =
  | { code: "place-outside" }
  | { code: "line-outside" }
  | { code: "line-too-short"; leastMm: number; foundMm: number }
  | { code: "line-crosses-itself" }
export type DividerFaultCode =
  | { code: "divider-too-short"; leastMm: number; foundMm: number }
  | { code: "divider-crosses-itself" }
  | { code: "divider-on-another"; number: number }
  | { code: "divider-divides-nothing" }
  | { code: "divider-past-edge"; pastMm: number }
  | { code: "divider-touches-another" }
  | { code: "working-section-too-small"; leastCm2: number; foundCm2: number }
