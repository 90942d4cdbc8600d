import type { HairlineForm } from "../../../../geometry/scalp/hairlineLandmarks"
import type { FinishTone, Scalp, StrandResult } from "../../../core/document/consultation"
import type { Tools } from "../../tools"
import { type HairPlaces, hairLine, histories, levelNames, porosities, stretches } from "./hair"
import { questions } from "./questions"
import { lookWindow, strandFaults } from "./strandTests"

export const client = (t: Tools, places: HairPlaces) => {
  const capitals = <K extends string>(names: Readonly<Record<K, string>>) =>
    Object.fromEntries(Object.entries<string>(names).map(([key, name]) => [key, t.capital(name)])) as Record<
      K,
      string
    >
  return {
    title: "Client",
    /** What undo calls a change of this chapter. */
    done: {
      answer: "Answer a question",
      "confirm-answers": "Confirm answers of another day",
      "set-asked-by": "Set who asks",
      "set-allergy": "Describe the allergy",
      "set-henna-date": "Set the date of the black henna tattoo",
      "answer-rest": "Answer the rest with no",
      "clear-answer": "Clear an answer",
      "set-age": "Set age",
      "clear-age": "Clear age",
      "set-scalp": "Set scalp",
      "clear-scalp": "Clear scalp",
      "set-level": "Set level now",
      "set-history": "Set hair history",
      "set-porosity": "Set porosity",
      "clear-porosity": "Clear porosity",
      "set-stretch": "Set elasticity",
      "clear-stretch": "Clear elasticity",
      "set-target": "Set target level",
      "set-finish": "Set finish tone",
      "clear-finish": "Clear finish tone",
      "set-brightest": "Set where it is brightest",
      "set-root": "Set how close to the root",
      "set-upkeep": "Set weeks between visits",
      "set-grey": "Set grey",
      "apply-test": "Apply a patch test",
      "record-test": "Record a patch test",
      "remove-test": "Remove a patch test",
      "record-strand": "Record a strand test",
      "rename-plan": "Rename the plan",
      "set-day": "Change the date",
      "set-initials": "Change the initials",
      "set-hairline": ({ form }: { form: HairlineForm }) => `Choose hairline: ${hairlineForms[form]}`,
      "average-head": "Use an average head",
      "tape-head": "Measure the head by tape",
      "caliper-head": "Measure the head by caliper",
      "set-head-size": "Change the head size",
      "set-density": "Change the density",
      "set-texture": "Change the hair texture",
      "set-length": ({ where }: { where: LengthPlace }) => `Change the length: ${lengthPlacesInside[where]}`,
    },
    caution:
      "Partline plans the work; it does not diagnose. Tests and the maker’s directions come first, and every figure is an estimate with a range.",
    plan: {
      title: "Plan",
      name: "Name of the plan",
      day: "Date",
      initials: "Initials",
      initialsHint: "Initials only: the map hangs where others read it.",
    },
    consultation: { hide: "Hide health answers", show: "Show health answers" },
    /** The parts of the consultation, each with how much of it is known. */
    steps: {
      ask: "Ask",
      hair: "Hair",
      head: "Head",
      goal: "What the client wants",
      count: (done: number, of: number) => `${t.whole(done)} of ${t.whole(of)}`,
    },
    /** Health: age, scalp, questions. */
    ask: {
      askedBy: "Asked by",
      alone: "Ask one by one",
      together: "Ask these too",
      inherited: (day: string | null) =>
        day === null
          ? "Answered on another day: tap the same answer to confirm it."
          : `Answered on ${t.date(day)}: tap the same answer to confirm it.`,
      confirm: (count: number) =>
        t.count(count, {
          one: "I asked again: # answer is as before",
          other: "I asked again: # answers are as before",
        }),
      allergy: { which: "To what?", when: "Since when?", how: "How does it show?" },
      hennaOn: "Date of the tattoo",
      age: "Age",
      ageNotKnown: "Age, not asked",
      years: "years",
      scalp: "Scalp",
      scalps: {
        calm: "Calm",
        sensitive: "Sensitive",
        irritated: "Irritated",
        broken: "Broken",
      } satisfies Record<Scalp, string>,
      rest: (count: number) =>
        t.count(count, {
          one: "I asked all of these: “No” to the remaining one",
          other: "I asked all of these: “No” to the remaining #",
        }),
    },
    questions: t.spelled(questions),
    hair: {
      title: "The hair now",
      where: "Where",
      allOver: "All over",
      zones: capitals(places.zones),
      parts: capitals(places.strandParts),
      along: "Along the strand",
      rootToEnds: "Root to ends",
      level: "Level now",
      levelNamed: (legend: string, level: number) => `${legend}: ${level}, ${levelNames[level]}`,
      levelNames,
      history: "Hair history",
      neverTreated: "Never treated",
      histories,
      porosity: "Porosity",
      porosities,
      stretch: "Elasticity, stretched wet",
      stretches,
      line: hairLine(t, places),
    },
    measures: {
      title: "Hair",
      density: "Density",
      densityUnit: "per cm²",
      densities: { low: "Low", medium: "Medium", high: "High" },
      texture: "Hair texture",
      textureUnit: "µm",
      textures: { fine: "Fine", medium: "Medium", coarse: "Coarse" },
      withFigure: (word: string, value: number) => `${word} ${t.number(value)}`,
      length: "Length when combed straight",
      lengthPlaces,
      lengthOf: {
        front: "Front length",
        sides: "Sides length",
        back: "Back length",
      } satisfies Record<LengthPlace, string>,
      lengths,
      lengthOption: (place: LengthName, cm: number) => `${lengths[place]}, ${t.told.cm(cm)}`,
      lengthAbove: (place: LengthName) => `Above the ${lengthsInside[place]}`,
      lengthBelow: (place: LengthName) => `Below the ${lengthsInside[place]}`,
      lengthBetween: (from: LengthName, to: LengthName) => `${lengths[from]} to ${lengthsInside[to]}`,
    },
    goals: {
      title: "What the client wants",
      target: "Target level, before toner",
      finish: "Finish tone",
      finishes: { cool: "Cool", neutral: "Neutral", warm: "Warm" } satisfies Record<FinishTone, string>,
      brightest: "Brightest where",
      root: "How close to the root",
      roots: { tight: "Tight", standard: "Standard", soft: "Soft" },
      rootOption: (word: string, mm: number) => `${word}, ${mm > 10 ? t.told.mm(mm) : t.mm(mm)}`,
      upkeep: "Weeks between visits",
      upkeepOther: "or another number",
      weeks: "weeks",
      grey: "Grey",
      greys: {
        "0": "None",
        "0.1": "A tenth",
        "0.25": "A quarter",
        "0.5": "Half",
        "0.75": "Most",
        "1": "All",
      },
    },
    tests: {
      title: "Patch tests (allergy alert tests)",
      applyNow: (product: string) => `Apply test now: ${product}`,
      orOther: "or another product",
      product: "Product to test",
      choose: "Choose one",
      apply: "Apply test now",
      clear: (readOn: string) =>
        `Clear, read ${t.date(readOn)}. Valid today under the period set by the maker or the salon.`,
      place: "Where on the skin",
      placeHint: "where the maker says",
      applied: "Applied",
      result: "Result",
      results: { unread: "Not read yet", clear: "Clear", reacted: "Reacted" },
      readBy: "Read by",
      readOn: "Read on",
      changed: "Anything changed since?",
      validUntil: "Valid until (from the maker’s sheet)",
      remove: "Remove",
    },
    strandTests: {
      title: "Strand test",
      outcomes: { held: "Passed", failed: "Failed" } satisfies Record<StrandResult["outcome"], string>,
      others: "Other products",
    },
    head: {
      /** A tape that the two others contradict; it is taken all the same. */
      contradicts: ({ name, byMm }: { name: string; byMm: number }) =>
        `${name} reads ${t.mm(Math.abs(byMm))} ${byMm > 0 ? "more" : "less"} than the other two foretell. Measure it again; until then it counts with less weight.`,
      size: "Head size",
      measured: "Measured",
      ways: { average: "Average", tape: "By tape", caliper: "By caliper" },
      units: "Units",
      unitNames: { metric: "Metric", inches: "Inches" },
      average: (around: string, over: string, frontToNape: string) =>
        `Average adult head: ${around} around, ${over} over the top, ${frontToNape} front to nape. Measure to fit the client.`,
      hairline: "Hairline",
      /** Each measure of a head, with its usual span and how it is taken. */
      measures: {
        aroundMm: {
          name: "Around",
          hint: (low: string, high: string, unit: string) =>
            `Usually ${low} to ${high} ${unit}: over the brows and round the back.`,
        },
        overMm: {
          name: "Over the top",
          hint: (low: string, high: string, unit: string) =>
            `Usually ${low} to ${high} ${unit}: from the front of one ear hole to the other.`,
        },
        frontToNapeMm: {
          name: "Front to nape",
          hint: (low: string, high: string, unit: string) =>
            `Usually ${low} to ${high} ${unit}: from the front hairline to the hollow of the nape.`,
        },
        lengthMm: {
          name: "Length",
          hint: (low: string, high: string, unit: string) =>
            `Usually ${low} to ${high} ${unit}: from between the brows to the back of the head.`,
        },
        breadthMm: {
          name: "Breadth",
          hint: (low: string, high: string, unit: string) =>
            `Usually ${low} to ${high} ${unit}: where it is widest, above the ears.`,
        },
        heightMm: {
          name: "Height",
          hint: (low: string, high: string, unit: string) =>
            `Usually ${low} to ${high} ${unit}: from the ear hole to the top, upright.`,
        },
      },
      hairlines: hairlineForms,
      whole: "On this head",
      area: "Hair-bearing area",
      hairs: "Hairs in all",
    },
    strandFaults: strandFaults(t),
    lookWindow: lookWindow(t),
  }
}

type LengthPlace = "front" | "sides" | "back"
const lengthPlaces: Record<LengthPlace, string> = { front: "Front", sides: "Sides", back: "Back" }
const lengthPlacesInside: Record<LengthPlace, string> = { front: "front", sides: "sides", back: "back" }

type LengthName = keyof typeof lengths
const lengths = {
  brow: "Brow",
  ear: "Ear",
  cheek: "Cheek",
  chin: "Chin",
  shoulder: "Shoulder",
  collarbone: "Collarbone",
  "shoulder blade": "Shoulder blade",
  "bra line": "Bra line",
  waist: "Waist",
}
const lengthsInside: Record<LengthName, string> = {
  brow: "brow",
  ear: "ear",
  cheek: "cheek",
  chin: "chin",
  shoulder: "shoulder",
  collarbone: "collarbone",
  "shoulder blade": "shoulder blade",
  "bra line": "bra line",
  waist: "waist",
}

const hairlineForms: Record<HairlineForm, string> = {
  round: "Round",
  straight: "Straight",
  receding: "Receding",
  peaked: "Peaked",
}

export type ClientWords = ReturnType<typeof client>
