import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { Consistency } from "../../../../presets/formula/consistency"
import { visitWeeks } from "../../../../presets/formula/developers"
import type { MixReason } from "../../../core/bowls/proposeMixes"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { AdditiveCode } from "../../../core/mixing/additives"
import type { BlendProblem } from "../../../core/mixing/blend"
import type { DeveloperReason, GentleReason, Stage, WeakerOffer } from "../../../core/mixing/developer"
import type { MixNote, MixProblem } from "../../../core/mixing/mix"
import type { PouredBottle, PouringCode } from "../../../core/mixing/pouring"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"

/** What this chapter says in the words of others. */
export type FoilNames = {
  foilCount(count: number, piece?: Piece): string
  foils(numbers: readonly number[], piece?: Piece): string
}

/** The mixes of a plan and their bowls: strength, ratio, grams, and why. */
export const mixing = (t: Tools, { foilCount, foils }: FoilNames) => {
  const blend = blendProblems(t)
  const consistencies = t.spelled(consistencyWords)
  return {
    name: (letter: string) => `Mix ${letter}`,
    remove: (letter: string) => `Remove mix ${letter}`,
    add: (letter: string) => `Add mix ${letter}`,
    product: "Product, with a sheet",
    otherProduct: "or another, by name",
    developer: "Developer",
    vol: ({ volume, percent }: { volume: number; percent: number }) =>
      `${t.number(volume)} vol, ${t.number(percent, 1)} %`,
    ratio: "Lightener to developer, by weight",
    parts: (parts: number) => `1 : ${t.number(parts)}`,
    developerParts: "Developer to 1 part of lightener",
    additive: "Additive",
    moveFoil: "Move a foil to another mix",
    foilIn: ({ foil, piece, kind, place }: { foil: number; piece: Piece; kind: string; place: string }) =>
      `${t.capital(foils([foil], piece))}: ${kind}, ${place}`,

    consistencies,
    /** How the foils of a mix want it, and the button that takes that ratio. */
    wants: ({
      foils: count,
      consistency,
      parts,
    }: {
      foils: number
      consistency: Consistency
      parts: number
    }) => `${foilCount(count)}: ${consistencies[consistency]}, 1 : ${t.number(parts)}`,
    mixSo: (parts: number) => `Mix 1 : ${t.number(parts)}`,

    noSheet: "No product sheet for this product: its own directions decide.",
    suggested: ({ volume }: { volume: number }) => `Suggested: ${t.number(volume)} vol.`,
    use: (volume: number) => `Use ${t.number(volume)} vol`,
    why: developerReasons(t),
    weaker: weakerWords(t),
    visit: ({ visit, fromLevel, toLevel, volume }: Stage & { visit: number }) =>
      visit === 1
        ? `Today: from level ${t.number(fromLevel)} to ${t.number(toLevel)} with ${t.number(volume)} vol.`
        : `Visit ${t.whole(visit)}, after ${t.spread(t.whole(visitWeeks.range[0]), t.whole(visitWeeks.range[1]))} weeks and once the hair has been checked: from level ${t.number(fromLevel)} to ${t.number(toLevel)} with ${t.number(volume)} vol.`,

    visits: {
      title: (count: number) => t.count(count, { one: "# visit", other: "# visits" }),
      today: (level: number) => `Plan today to level ${t.number(level)}, and the next visit`,
      /** The plan of the second visit: what it is called, and what stands in its note. */
      name: (plan: string) => `${plan}, visit 2`,
      after: ({
        plan,
        day,
        toLevel,
        volume,
      }: {
        plan: string
        day: string
        toLevel: number
        volume: number
      }) =>
        `Visit 2, after “${plan}” of ${t.date(day)}. Look at the hair and enter its level first; the aim is level ${t.number(toLevel)} with at most ${t.number(volume)} vol.`,
      stored: ({ name, day }: { name: string; day: string }) =>
        `Visit 2 is in your plans: ${name}, from ${t.date(day)} (${t.whole(visitWeeks.range[0])} weeks, common practice). Health is asked again on the day.`,
      open: "Open visit 2",
      undo: "Undo both",
      notStored: (why: string) => `Nothing was changed: the plan of visit 2 was not saved. ${why}`,
      /** What is written down for the visits after this one, in the note of the plan. */
      note: ({ toLevel, volume }: { toLevel: number; volume: number }) =>
        `Next visit, after ${t.spread(t.whole(visitWeeks.range[0]), t.whole(visitWeeks.range[1]))} weeks: check the hair, then to level ${t.number(toLevel)} with ${t.number(volume)} vol.`,
    },

    suggestions: {
      title: (count: number) =>
        t.count(count, {
          one: "One mix suggested from the consultation",
          other: "# mixes suggested from the consultation",
        }),
      use: "Use this suggestion",
      mix: ({ volume, percent, parts, foils: numbers }: Suggestion) =>
        `${t.number(volume)} vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}, for ${foils(numbers)}`,
      why: {
        ...developerReasons(t),
        "no-sheet": ({ product }) => `No product sheet for ${product}: its own directions decide.`,
        consistency: ({ consistency }) => `Consistency: ${consistencies[consistency]}.`,
        joined: "Amounts too small for their own bowl go in with another mix.",
      } satisfies Sentences<MixReason>,
    },

    unused: (letter: string) => `No foil uses mix ${letter} yet.`,
    wanted: ({
      foils: count,
      piece,
      mix,
      wantedG,
    }: {
      foils: number
      piece: Piece
      mix: string
      wantedG: Range
    }) =>
      t.count(count, {
        one: `${foilCount(count, piece)} uses mix ${mix}: ${t.told.gramsRange(wantedG)} on the hair; the bowl is planned at the upper figure.`,
        other: `${foilCount(count, piece)} use mix ${mix}: ${t.told.gramsRange(wantedG)} on the hair; the bowls are planned at the upper figure.`,
      }),
    mixed: ({ mixedG, wasteG }: { mixedG: number; wasteG: Range }) =>
      `${t.told.grams(mixedG)} mixed, of which ${t.told.gramsRange(wasteG)} stays in the bowl and brush or is left over.`,
    cost: (amount: number) => `It costs ${t.fixed(amount, 2)}.`,
    strength: ({ volume, percent, percentWw, onHeadPercent }: Strength) =>
      `${t.number(volume)} vol is sold as ${t.number(percent, 1)} % (calculated ${t.number(percentWw)} % by weight; labels vary); ${t.number(onHeadPercent, 1)} % once mixed.`,

    bowls: {
      title: (count: number) => (count === 0 ? "Bowls" : t.count(count, { one: "# bowl", other: "# bowls" })),
      none: "No foils yet. The bowls for them stand here.",
      toPlacement: "Draw foils",
    },
    bowl: {
      when: (minute: number) => `mix at minute ${t.whole(minute)}`,
      foils: (numbers: readonly number[], piece: Piece) => t.capital(foils(numbers, piece)),
      lightener: "Lightener",
      developer: "Developer",
      strength: ({ volume, percent, parts }: { volume: number; percent: number; parts: number }) =>
        `${t.number(volume)} vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}`,
      byVolume: (ml: number) => `Developer by volume: ${t.number(ml)} mL`,
      grams: (grams: number) => `${t.number(grams, 1)} g`,
    },
    /** A mix in one line, before it is changed. */
    line: ({ product, volume, percent, parts, foils: count }: MixLine) =>
      `${product}, ${t.number(volume)} vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}, ${foilCount(count)}`,
    change: "Change",
    changeThis: (letter: string) => `Change mix ${letter}`,
    title: "Mixes",
    poured: pouringWords(t),
    blend,
    additives: additiveWords(t),
    problem: mixProblems(t),
    note: mixNotes(t),
  }
}

type MixLine = { product: string; volume: number; percent: number; parts: number; foils: number }
type Suggestion = { volume: number; percent: number; parts: number; foils: readonly number[] }
type Strength = { volume: number; percent: number; percentWw: number; onHeadPercent: number }

const consistencyWords: Record<Consistency, string> = {
  thick: "thick",
  creamy: "yoghurt-thick",
  loose: "loose",
}

const levels = (t: Tools, count: number) => t.count(count, { one: "# level", other: "# levels" })

const developerReasons = (t: Tools) => {
  return {
    "lift-printed": ({ liftLevels, volume, printed }) =>
      `${levels(t, liftLevels)} to lift; the product sheet states ${t.spread(t.number(printed.low), t.number(printed.high))} for ${t.number(volume)} vol.`,
    "lift-expected": ({ liftLevels, volume, weakerVolume }) =>
      `${levels(t, liftLevels)} to lift; ${t.number(weakerVolume)} vol is not expected to reach it within the maximum time, ${t.number(volume)} vol is.`,
    "not-in-one-visit": ({ liftLevels, volume, visits }) =>
      `${levels(t, liftLevels)} is not expected within the maximum time with ${t.number(volume)} vol. Plan ${t.whole(visits)} visits and reassess the hair between them.`,
    "more-than-one-visit": ({ liftLevels, mostLevels, volume, visits }) =>
      `${levels(t, liftLevels)} is more than one visit: up to ${t.number(mostLevels)} with ${t.number(volume)} vol, the strongest used here. Plan ${t.whole(visits)} visits and reassess the hair between them.`,
    "level-now-unknown": "Current level not entered. Enter it before choosing a developer.",
    "target-unknown": "Target level not entered. Enter it before choosing a developer.",
    "no-lift-printed": ({ product }) => `${product} states no levels of lift. Enter them from the tub.`,
    "target-beyond-scale": ({ level, lightestLevel }) =>
      `Target level ${t.number(level)} is beyond the scale. Choose ${t.number(lightestLevel)} or less.`,
    "target-darker": ({ fromLevel, toLevel }) =>
      `Target level ${t.number(toLevel)} is darker than the hair (${t.number(fromLevel)}). Lightener cannot darken: choose a lighter level or a lowlight.`,
    "at-target": ({ level }) => `The hair is at level ${t.number(level)} already. It needs tone, not lift.`,
    "no-lift-allowed": ({ product }) =>
      `${product} states no lift with a developer that may be used here. Choose another product.`,
  } satisfies Sentences<DeveloperReason>
}

const gentleWords: Record<GentleReason, string> = {
  hairline: "hair at the hairline is fine and lifts first",
  fine: "fine hair lifts sooner and stretches sooner",
  porous: "porous hair processes faster",
  lightened: "already-lightened hair is more porous",
}

const weakerWords =
  (t: Tools) =>
  ({ volume, reasons, shortByLevels }: WeakerOffer) => {
    const why = t.and(reasons.map((reason) => gentleWords[reason]))
    return shortByLevels > 0
      ? `Or ${t.number(volume)} vol: ${why}, but it stops ${levels(t, shortByLevels)} short of the target.`
      : `Or ${t.number(volume)} vol: ${why}.`
  }

const blendProblems = (t: Tools) =>
  ({
    "no-bottles": "enter at least one bottle, for example 12,3.",
    "bottle-percent": ({ percent }) => `${t.number(percent)} % is not a strength; enter 0 to 100.`,
    "want-percent": ({ percent }) => `${t.number(percent)} % is not a strength; enter 0 to 100.`,
    "no-amount": ({ grams }) => `${t.number(grams)} g is no amount; enter grams above 0.`,
    "want-too-weak": ({ wantPercent, weakestPercent }) =>
      `${t.number(wantPercent)} % is weaker than the weakest bottle, ${t.number(weakestPercent)} %; add a weaker bottle.`,
    "want-too-strong": ({ wantPercent, strongestPercent }) =>
      `${t.number(wantPercent)} % is stronger than the strongest bottle, ${t.number(strongestPercent)} %; choose a weaker strength.`,
  }) satisfies Sentences<BlendProblem>

const pouringWords = (t: Tools) => {
  const bottle = ({ volume, percent, grams }: PouredBottle) =>
    `${t.told.grams(grams, 1)} of ${t.number(volume)} vol (${t.number(percent, 1)} %)`
  return {
    poured: ({ bottles }) => `Developer by weight: ${bottles.map(bottle).join(" + ")}.`,
    "not-poured": ({ volume, problem }) =>
      `${t.number(volume)} vol cannot be blended from your bottles: ${say<BlendProblem>(blendProblems(t), problem)}`,
  } satisfies Sentences<PouringCode>
}

const additiveWords = (t: Tools) =>
  ({
    "instead-of-developer": ({ grams, name }) =>
      `${t.told.grams(grams, 1)} ${name}, in place of as much developer: the ratio stays.`,
    "beside-developer": ({ grams, name, restParts }) =>
      `${t.told.grams(grams, 1)} ${name}, on top of the developer: 1 g of lightener to ${t.number(restParts)} g of the rest.`,
  }) satisfies Sentences<AdditiveCode>

const mixProblems = (t: Tools) => {
  const said = ({
    product,
    lightener,
    developer,
  }: {
    product: string
    lightener: number
    developer: number
  }) => `${product}, ratio ${t.number(lightener)} : ${t.number(developer)}`
  return {
    "ratio-parts": (ratio) => `${said(ratio)}: enter parts above 0, lightener first, for example 1 : 2.`,
    "ratio-upside-down": (ratio) =>
      `${said(ratio)}: more lightener than developer. Enter lightener first, ${t.number(ratio.developer)} : ${t.number(ratio.lightener)}.`,
    "no-strength": ({ product, percent }) =>
      `${product}, developer: ${t.number(percent)} % is no strength; enter 3 to 12 %.`,
    "scale-step": ({ grams }) =>
      `Scale: ${t.number(grams)} g is no step of a scale; enter 0.1, 0.5, 1, 2 or 5 g.`,
    "foil-grams": ({ foil, lowG, highG }) =>
      `Foil ${foil}: ${t.number(lowG)} to ${t.number(highG)} g of product; enter grams of 0 or more, the lower first.`,
    "foil-minutes": ({ foil, minutes }) =>
      `Foil ${foil}: ${t.number(minutes)} minutes to place; enter minutes of 0 or more.`,
  } satisfies Sentences<MixProblem>
}

const mixNotes = (t: Tools) =>
  ({
    "pot-life-assumed": ({ product, minutes }) =>
      `${product} does not state how long a mix lasts; ${t.minutes(minutes)} assumed (common practice).`,
    "foil-outlasts-bowl": ({ foil, minutes }) =>
      `Foil ${foil} takes longer to place than the ${t.minutes(minutes)} a mix lasts. Split it in two.`,
    "off-ratio": ({ scaleStepG, parts, wantedParts }) =>
      `With ${t.number(scaleStepG)} g steps the bowl comes to 1 : ${t.number(parts)} instead of 1 : ${t.number(wantedParts)}. A finer scale holds the ratio.`,
  }) satisfies Sentences<MixNote>
