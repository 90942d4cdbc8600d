import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { WeighableCode } from "../../core/bowls/weighables"
import type { LearntFigures } from "../../core/document/salon"
import type { TrustCode } from "../../core/weighing/trust"
import type { ReadingProblem } from "../../core/weighing/weighedBowl"
import { type ListProblem, neededColumns } from "../../core/weighing/weighingCsv"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"

export const weighing = (t: Tools, { foils: foilsWords, kinds, mix: mixName }: CommonWords) => ({
  done: {
    "keep-weighing": "Save a weighing",
    "add-list": "Add weighings from a list",
    "leave-out": "Leave a weighing out",
    "count-again": "Count a weighing again",
    "remove-weighing": "Remove a weighing",
    "back-to-start": "Go back to the starting figures",
    "count-all": "Count all weighings again",
    "take-start": "Start from other salons’ figures",
    "leave-start": "Go back to the trade’s figures",
  },

  title: "Weigh your bowls",
  bowl: {
    how: "Weigh the bowl with its brush before the first foil and after the last.",
    noFoils: "No foils yet. Then weigh each bowl, with its brush, before and after.",
    what: "Weighed",
    chooseOne: "Choose one",
    before: "Before",
    after: "After",
    save: ({ productG }: { productG: number }) => `Save: ${t.number(productG)} g used`,
    /** What was weighed, in the list to choose from and as it is saved. */
    name: {
      bowl: ({ mix, bowl, foils }) =>
        `${t.capital(mixName(mix))}, bowl ${t.whole(bowl)}: ${foilsWords(foils)}`,
      foil: ({ foil }) => `Foil ${t.whole(foil)} alone`,
      coat: ({ foil, part, mix }) =>
        `${t.capital(mixName(mix))} on ${part === "roots" ? "the roots" : "mid-lengths and ends"} of foil ${t.whole(foil)}`,
    } satisfies Sentences<WeighableCode>,
    /** A weighing as it is saved: the day and name of its plan, then what was weighed. */
    ofPlan: ({ date, plan, what }: { date: string; plan: string; what: string }) =>
      plan ? `${date}, ${plan}: ${what}` : `${date}: ${what}`,
    problem: readingProblems(t),
  },
  learnt: learntWords(t, kinds),
  picture: {
    name: "Expected and weighed grams; the list below says the same in numbers",
    axis: "g weighed",
    legend:
      "Up: grams expected, the bar four times in five. Along: grams weighed. On the slanting line both agree. Dots count, crosses look wrong, rings are left out.",
  },
  rows: {
    count: (count: number) => t.count(count, { one: "# weighing", other: "# weighings" }),
    doubted: "Weighings that look wrong",
    looksWrong: ({ name, weighedG, expectedG }: { name: string; weighedG: number; expectedG: number }) =>
      `${name}: ${t.number(weighedG)} g weighed; the others lead to about ${t.grams(expectedG)}. Check it, or leave it out.`,
    figures: ({ weighedG, expectedG }: { weighedG: number; expectedG: number }) =>
      `${t.number(weighedG)} g weighed, ${t.grams(expectedG)} expected`,
    counts: "Counts",
    remove: "Remove",
    removeThis: ({ name }: { name: string }) => `Remove ${name}`,
  },
  start: {
    take: "Start from other salons’ figures, JSON",
    leave: "Start from the trade’s figures",
    from: ({ salons }: { salons: number }) =>
      `Starts from the figures of ${t.count(salons, { one: "# salon", other: "# salons" })}, joined. Your own bowls narrow them.`,
  },
  list: {
    add: "Add a list, CSV",
    save: "Save the list, CSV",
    backToStart: "Back to the starting figures",
    countAll: "Count all weighings again",
    /** A weighing that came from a list. */
    line: ({ file, line }: { file: string; line: number }) => `${file}, line ${t.whole(line)}`,
    problem: listProblems(t),
    /** A line that the others do not bear out. */
    doubtful: ({ line, weighedG, expectedG }: { line: number; weighedG: number; expectedG: number }) =>
      `Line ${t.whole(line)} looks wrong: ${t.number(weighedG, 1)} g weighed; the others lead to about ${t.number(expectedG, 1)} g. Check it or leave it out.`,
  },
})

export type WeighingWords = ReturnType<typeof weighing>

const readingProblems = (t: Tools) => {
  const said = ({ beforeG, afterG }: ReadingProblem) =>
    `${t.number(beforeG, 1)} g before and ${t.number(afterG, 1)} g after`
  return {
    "not-read": (read) => `${said(read)}: enter both readings in grams, with the same bowl and brush.`,
    gained: (read) => `${said(read)}: the bowl weighs more after than before. Were the readings swapped?`,
    "nothing-placed": (read) => `${said(read)}: nothing was used. Leave this bowl out.`,
  } satisfies Sentences<ReadingProblem>
}

const learntWords = (t: Tools, kinds: CommonWords["kinds"]) => {
  const { share, probability } = calibrationFigures.trust
  const target = `within ${t.percent(share)}, ${t.number(10 * probability)} times in 10`
  const stands = ({ withinShare }: { withinShare: number }) =>
    `The middle figure is within ${t.percent(withinShare)} of the truth, 9 times in 10.`
  return {
    trust: {
      "no-agreement": "These weighings do not agree well enough to say how far out the middle figure may be.",
      trusted: (trust) => `${stands(trust)} It can be trusted.`,
      "more-needed": (trust) =>
        `${stands(trust)} ${t.count(trust.more, {
          one: `One more weighing like these is needed for ${target}.`,
          other: `# more weighings like these are needed for ${target}.`,
        })}`,
      "too-many-needed": (trust) =>
        `${stands(trust)} No number of weighings like these would bring it ${target}.`,
    } satisfies Sentences<TrustCode>,
    byStart: "Until then this plan uses the starting figures, which are assumptions.",
    /** What the figures of this plan were learnt from. */
    byWeighings: (learnt: readonly Pick<LearntFigures, "product" | "kind" | "weighings">[]) =>
      `This plan uses what was ${t.spelled("learnt")} from ${t.and(
        learnt.map(
          ({ product, kind, weighings }) =>
            `${[product, kind && kinds[kind]].filter(Boolean).join(", ") || "all weighings"} (${t.whole(weighings)} weighed)`,
        ),
      )}.`,
    figure: "Figure",
    start: "To start with",
    weighed: "As weighed",
    names: {
      lossG: "Loss per foil",
      soakGPerG: "Soaks in, per gram of hair",
      coatMgPerCm2: "Coats each cm² of hair",
    },
    grams: ({ low, mid, high }: { low: number; mid: number; high: number }) =>
      `${t.number(mid)} g (${t.number(low)} to ${t.number(high)})`,
    milligrams: ({ low, mid, high }: { low: number; mid: number; high: number }) =>
      `${t.number(mid)} mg (${t.number(low)} to ${t.number(high)})`,
  }
}

const listProblems = (t: Tools) => {
  const columns = `expected the columns ${neededColumns.join(",")} (and foils, where a row is a bowl of several)`
  const at = ({ line, column }: { line: number; column: string }) => `Line ${t.whole(line)}, ${column}`
  const found = (cell: { found: string }) => (cell.found === "" ? "it is empty" : `found "${cell.found}"`)
  return {
    "file-too-large": ({ mostMb }) =>
      `A list of weighings has at most ${t.whole(mostMb)} MB. Is this another file?`,
    "header-empty": `Line 1 is empty: ${columns}.`,
    "header-separator": ({ separator }): string =>
      separator === "tabs"
        ? "Line 1: the columns are separated by tabs. Save the list with commas between columns and points in numbers, 4.5."
        : "Line 1: the columns are separated by semicolons. Save the list with commas between columns and points in numbers, 4.5.",
    "columns-missing": ({ columns: missing }) => `Line 1: ${t.and(missing)} missing; ${columns}.`,
    "column-unknown": ({ column }) => `Line 1: "${column}" is one column too many; ${columns}.`,
    cells: ({ line, cells, columns }) =>
      `Line ${t.whole(line)} has ${t.whole(cells)} values for ${t.whole(columns)} columns. If numbers hold commas, write points: 4.5 for 4,5.`,
    "decimal-comma": (cell) => `${at(cell)}: ${found(cell)}; write a point, ${cell.write}.`,
    "no-number": (cell) => `${at(cell)}: expected a number, ${found(cell)}.`,
    negative: (cell) => `${at(cell)}: expected 0 or more, ${found(cell)}. Weigh again or leave the line out.`,
    "nothing-used": (cell) =>
      `${at(cell)}: expected grams above 0, ${found(cell)}. Leave the line out if nothing was used.`,
    "not-whole": (cell) => `${at(cell)}: expected a whole number from 1, ${found(cell)}.`,
    "too-large": (cell) => `${at(cell)}: expected at most ${t.whole(cell.most)}, ${found(cell)}.`,
    "more-slips": ({ count }) =>
      t.count(count, { one: "And one more like these.", other: "And # more like these." }),
  } satisfies Sentences<ListProblem>
}
