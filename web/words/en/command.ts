import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { LearnProblem } from "../../core/joining/readRows"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import { classProblems } from "./classProblems"
import { classVerbs, headOptions } from "./classVerbs"

/** The headless command: what it explains of itself, and what it cannot use. */
export const command = (t: Tools) => ({
  done: {},
  eachExplains: "Each verb explains itself with --help.",
  failed: (why: string) => `Partline could not do this: ${why}`,
  language: (tags: readonly string[]) => `language of the sentences: ${tags.join(", ")}; en-GB if not given`,

  problems: {
    "unknown-verb": ({ verb, known }) => `"${verb}" is not a verb: expected ${known.join(", ")}.`,
    "unknown-option": ({ option, known }) =>
      known.length > 0
        ? `--${option} is not an option of this verb: expected ${known.map((name) => `--${name}`).join(", ")}.`
        : `--${option} is not an option of this verb: expected no option.`,
    "given-twice": ({ option }) => `--${option} is given twice: expected it once.`,
    "no-value": ({ option }) => `--${option}: expected a value after it.`,
    "no-file-expected": ({ file }) => `"${file}" is not expected here: this verb takes no file.`,
    "file-missing": "FILE is missing: expected the path of a plan.",
    "one-file-too-many": ({ file }) => `"${file}" is one file too many: expected the path of one plan.`,
    "not-a-choice": ({ option, known, found }) =>
      found === null
        ? `--${option} is missing: expected ${t.or(known)}.`
        : `--${option}: expected ${t.or(known)}, found "${found}".`,
    "out-missing": "--out is missing: expected the path of the PDF to write.",
    "cannot-write": ({ path }) =>
      `--out: "${path}" cannot be written: expected a path in a folder that exists.`,
    "cannot-read": ({ file }) => `"${file}" cannot be read: expected the path of a plan saved by Partline.`,
    "cannot-read-list": ({ file }) =>
      `"${file}" cannot be read: expected the path of a list of weighings, CSV.`,
    "head-choose":
      "The size of the head: expected either --length --breadth --height or --around --over --front-to-nape.",
    "measure-missing": ({ option }) => `--${option} is missing: expected millimetres.`,
    "measure-unusable": ({ option, found }) => `--${option}: expected millimetres above 0, found "${found}".`,
    "number-missing": ({ option }) => `--${option} is missing: expected ${t.spelled(numbers)[option]}.`,
    "number-unusable": ({ option, found }) =>
      `--${option}: expected ${t.spelled(numbers)[option]}, found "${found}".`,
    "minutes-unusable": ({ option, found }) =>
      `--${option}: expected ${minutes[option]} above 0, found "${found}".`,
    "levels-together": "--from and --to: expected both levels, or neither.",
    "consent-missing":
      "--consent yes is missing: the salon says with it that its figures may be passed on. No client data are in them.",
    "csv-out-missing": "--out is missing: expected the path of the CSV to write.",
    "start-out-missing": "--out is missing: expected the path of the JSON to write.",
    "nothing-to-learn":
      "Nothing to pass on: no bowl weighed after a service, no strand test and no foil timed at the chair. Give more plans, or a list of weighings.",
    "too-few-salons": ({ salons, least }) =>
      `${t.count(salons, { one: "# file", other: "# files" })}, one a salon: expected at least ${t.whole(least)}.`,
    "cannot-read-folder": ({ folder }) => `"${folder}" cannot be read: expected the path of a folder.`,
    "client-missing": "--client is missing: expected the id or the name that the verb clients prints.",
    "client-unknown": ({ client }) => `--client: nobody here is "${client}". The verb clients prints who is.`,
    "client-several": ({ client, ids }) =>
      `--client: several are called "${client}": expected one of the ids ${ids.join(", ")}.`,
    "client-out-missing": "--out is missing: expected the path of the JSON or the HTML to write.",
    "sure-missing": ({ name, plans, files }) =>
      `--sure yes is missing: ${name} would be erased for good, ${t.count(plans, { one: "# plan", other: "# plans" })}, from ${files.join(", ")}. Nothing was changed.`,
    "cannot-erase": ({ path }) => `"${path}" cannot be deleted or written: what it holds is still there.`,
    "same-rows": ({ file, other }) => `"${file}" holds the same rows as "${other}": give each salon once.`,
    "not-a-technique": ({ file, known }) =>
      `"${file}" is no technique: expected the path of a technique file or one of ${known.join(", ")}.`,
    "not-a-model": ({ file, known }) =>
      `"${file}" is no model: expected the path of a plan or a technique file, or one of ${known.join(", ")}.`,
    "names-missing": "--names is missing: expected the path of the class, CSV with the column name.",
    "folder-out-missing": "--out is missing: expected the path of the folder to write to.",
    "plan-out-missing": "--out is missing: expected the path of the plan to write.",
    "learner-missing":
      "LEARNER is missing: expected the path of at least one learner's plan after the model.",
    "table-out-alone": "--names is for a class: expected --out, --sheets or both with it.",
    "learner-twice": ({ file }) =>
      `"${file}": another learner's file makes the same name. Give each once, or tell them apart with --names.`,
    "within-unusable": ({ found, known }) =>
      `--within: expected ${known.join(", ")}, each with a number above 0, such as ${known[0]}=3; found "${found}".`,
    "no-room": ({ name, learner }) =>
      learner === null
        ? `${name} has no room on this head.`
        : `${name} has no room on the head of ${learner}.`,
    "cannot-write-one": ({ path, written }) =>
      written.length === 0
        ? `"${path}" cannot be written: expected a folder that can be written to. Nothing was written.`
        : `"${path}" cannot be written: expected a folder that can be written to. Written before it: ${written.join(", ")}.`,
  } satisfies Sentences<ArgumentProblem>,

  passedOn: "Numbers alone: no name, note, product or day is in the list. Read it before you pass it on.",
  joined:
    "A new salon takes this file in under “Formula”, “Weigh your bowls”; calibrate takes it with --start. Its own bowls then narrow it.",
  learn: learnProblems(t),
  classes: classProblems(t),
  progress: (done: number, count: number) => `${t.whole(done)} of ${t.whole(count)}`,

  overLegalLimit: (percent: number) =>
    `Note: the law allows at most ${t.number(percent)} % in the EU and the UK in a hair product that is ready for use.`,

  /** What each verb prints, what else there is to know of it, and each option. */
  verbs: {
    head: {
      summary:
        "The measures on the skin, the area of the hair and its zones, and the landmarks of a head of this size.",
      details: [],
      options: headOptions,
    },
    measure: {
      summary:
        "The figures of every section of a plan, in the order of application, and their totals, with no hair counted twice.",
      details: [],
      options: {},
    },
    check: {
      summary:
        "Whether the plan may be mixed, with stops and cautions: exit 1 for a stop, 3 for what was not asked, 0 when cleared.",
      details: [],
      options: {},
    },
    mix: {
      summary: "What to mix for the plan: strength, grams wanted, and each bowl with its minute.",
      details: [],
      options: {},
    },
    sheet: {
      summary: "A sheet of a plan as PDF; the one to take home as a page for a browser, too.",
      details: [
        "--language is the language of the sheet; sentences about the command are in that of --messages.",
      ],
      options: {
        kind: "placement, technique, take-home or record",
        paper: "a4 or letter; letter for en-US, else a4, if not given",
        out: "where to write the PDF; take-home ending in .html is written as a page for a browser",
        front: "the front as you face the client (facing), or as seen in the mirror; facing if not given",
        messages: "language of the sentences about the command; en-GB if not given",
      },
    },
    validate: {
      summary: "Whether a file is a plan that can be opened, and what is wrong with it if not.",
      details: [],
      options: {},
    },
    blend: {
      summary: "Grams of each bottle that together are the strength wanted, by mass.",
      details: [],
      options: {
        have: "per cents of the bottles, a comma between: 12,3",
        want: "per cent wanted: 6",
        grams: "grams wanted in all: 90",
      },
    },
    calibrate: {
      summary:
        "Grams a foil, soak and coat learnt from weighed foils or bowls (columns hairG,strandAreaCm2,productG and, for bowls, foils), with 80 % ranges.",
      details: [],
      options: { start: "joined figures to start from (learn join); the starting figures if not given" },
    },
    clients: {
      summary: "The clients of a folder: who, how many plans, when they were here last, and in which files.",
      details: [
        "Reads the files ending in .json that lie in the folder itself: plans, cards, clients’ files and backups. No plan names",
        "its client: a client’s file or a backup says which plans are whose. unread: files that nobody knows whose they are.",
      ],
      options: {},
    },
    export: {
      summary:
        "All that a folder holds of one client, as a file that Partline opens again or a page to read.",
      details: ["It holds the client’s health answers and is not locked."],
      options: {
        client: "the client’s id or name, as the verb clients prints it",
        out: "where to write it; ending in .html it is a page to read",
      },
    },
    erase: {
      summary:
        "Erases one client from a folder for good: their card, plans and file, and them alone from backups. Techniques stay.",
      details: [
        "Without --sure it says what would go and changes nothing. Prints the files deleted and rewritten, and those unread: look",
        "through these yourself. Copies in other folders and printed sheets are not reached.",
      ],
      options: {
        client: "the client’s id or name, as the verb clients prints it",
        sure: "yes: they go for good",
      },
    },
    "learn export": {
      summary:
        "What a salon learnt, as a small list to pass on: weighings, strand tests and paces, no client data.",
      details: [
        "Takes plans with their services and lists of weighings; a bowl counts when it was weighed after the service. Lines 1 and",
        "2 of the list are the columns and their units. Rows: weighing (kind, foils, hairG, strandAreaCm2, productG), strand (one",
        "look a row) and pace (foils timed of one pair of hands, their mean and spread). Nothing else is written.",
      ],
      options: {
        consent: "yes: the salon agrees that its figures are passed on",
        out: "where to write the CSV",
      },
    },
    "learn join": {
      summary: "The lists of three salons or more, joined into what a new salon starts from.",
      details: [
        "Prints each figure for a new salon with its 80 % range (half time: two thirds of heads) and how far salons differ in it,",
        "as a share, one standard deviation. Null where fewer than three salons tell of a figure; it then stays as it was.",
      ],
      options: { out: "where to write the joined figures, JSON" },
    },
    ...classVerbs,
    timing: {
      summary: "When each foil goes on, may be ready and comes off, the bowls and checks, and the clashes.",
      details: [
        "Prints foils, bowls, looks, firstOnMin, lastOnMin, rinseMin and conflicts; beyond them chairMin (the whole appointment, a",
        "range), heat (when it is on and off, or null), steps (rinse, detangle, toner by zone, dry) and, for each bowl, its mix and",
        "sections. An end of readyMin is null where the target is not reached in time. Rules of conflicts: over-run,",
        "under-processed, pot-life, booking, and hairline-ahead (one rinse, and the hairline ready well before the back).",
      ],
      options: {
        pace: "minutes a foil, from one to the next; the plan’s pace if not given",
        hands: "1: the colourist, 2: with an assistant; as the plan says if not given",
        rinse: "each: every foil off when it is ready; together: one rinse; as the plan says if not given",
        from: "level of the hair now, 1 to 10; with --to; the plan’s levels if not given",
        to: "target level; without it foils are ready when most are",
        booking: "minutes booked; the plan’s booking if not given",
      },
    },
  },
})

const learnProblems = (t: Tools) => {
  const at = ({ line, column, found }: { line: number; column: string; found: string }) =>
    `Line ${t.whole(line)}, ${column}: ${found === "" ? "it is empty" : `found "${found}"`}`
  const strands = {
    order: "its looks are not in order of time, or past the longest time",
    printed: "the lower printed level is above the higher",
    alike: "its rows differ in strength, printed levels, longest time or starting level",
    "too-many": "it has more looks than a strand test",
  }
  return {
    "too-large": ({ mostMb }) => `Expected a list of at most ${t.whole(mostMb)} MB. Is this another file?`,
    "columns-missing": ({ columns }) =>
      `Line 1: ${t.and(columns)} missing. Write the list again with learn export.`,
    "column-unknown": ({ column }) => `Line 1: "${column}" is not a column of such a list. Take it out.`,
    unit: (cell) => `${at(cell)}; expected the unit ${cell.unit}.`,
    cells: ({ line, cells, columns }) =>
      `Line ${t.whole(line)} has ${t.whole(cells)} values for ${t.whole(columns)} columns. If numbers hold commas, write points: 4.5 for 4,5.`,
    word: (cell) =>
      cell.known.length > 0
        ? `${at(cell)}; expected ${t.or(cell.known)}.`
        : `${at(cell)}; expected nothing. Empty it.`,
    number: (cell) =>
      `${at(cell)}; expected a ${cell.isWhole ? "whole number" : "number"} from ${t.number(cell.low, 2)} to ${t.number(cell.high, 2)}. Correct it, or take the line out.`,
    "not-of-row": (cell) => `${at(cell)}; a ${cell.row} row has none. Empty it.`,
    strand: ({ strand, why }) =>
      `Strand ${t.whole(strand)}: ${strands[why]}. Correct its rows, or take them out.`,
    "no-rows": "The list has no rows.",
    more: ({ count }) => t.count(count, { one: "And one more like these.", other: "And # more like these." }),
  } satisfies Sentences<LearnProblem>
}

const numbers = {
  have: "per cents with a comma between, 12,3",
  want: "a per cent, 6 or 7.5",
  grams: "grams, 90 or 37.5",
}
const minutes = { pace: "minutes a foil", booking: "minutes" }

export type CommandWords = ReturnType<typeof command>
