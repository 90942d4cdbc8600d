import { describe, expect, it } from "vitest"
import { verbNames, verbs } from "../../../web/command/verbs"
import type { ArgumentProblem } from "../../../web/core/command/argumentProblem"
import type { LearnProblem } from "../../../web/core/joining/readRows"
import { say } from "../../../web/words/say"
import { isSentence, type SamplesOf, samplesOf } from "../../support/sentences"
import { everyLanguage } from "../../support/words"

const problems: SamplesOf<ArgumentProblem> = {
  "unknown-verb": { code: "unknown-verb", verb: "bake", known: ["head", "mix"] },
  "unknown-option": { code: "unknown-option", option: "oven", known: [] },
  "given-twice": { code: "given-twice", option: "out" },
  "no-value": { code: "no-value", option: "out" },
  "no-file-expected": { code: "no-file-expected", file: "a" },
  "file-missing": { code: "file-missing" },
  "one-file-too-many": { code: "one-file-too-many", file: "b" },
  "not-a-choice": { code: "not-a-choice", option: "paper", known: ["a4", "letter"], found: null },
  "out-missing": { code: "out-missing" },
  "cannot-write": { code: "cannot-write", path: "x" },
  "cannot-read": { code: "cannot-read", file: "x" },
  "cannot-read-list": { code: "cannot-read-list", file: "x" },
  "head-choose": { code: "head-choose" },
  "measure-missing": { code: "measure-missing", option: "breadth" },
  "measure-unusable": { code: "measure-unusable", option: "breadth", found: "x" },
  "number-missing": { code: "number-missing", option: "want" },
  "number-unusable": { code: "number-unusable", option: "have", found: "x" },
  "minutes-unusable": { code: "minutes-unusable", option: "pace", found: "0" },
  "levels-together": { code: "levels-together" },
  "consent-missing": { code: "consent-missing" },
  "csv-out-missing": { code: "csv-out-missing" },
  "start-out-missing": { code: "start-out-missing" },
  "nothing-to-learn": { code: "nothing-to-learn" },
  "too-few-salons": { code: "too-few-salons", salons: 1, least: 3 },
  "cannot-read-folder": { code: "cannot-read-folder", folder: "x" },
  "client-missing": { code: "client-missing" },
  "client-unknown": { code: "client-unknown", client: "x" },
  "client-several": { code: "client-several", client: "x", ids: ["a", "b"] },
  "client-out-missing": { code: "client-out-missing" },
  "sure-missing": { code: "sure-missing", name: "x", plans: 2, files: ["a.json", "b.json"] },
  "cannot-erase": { code: "cannot-erase", path: "x" },
  "same-rows": { code: "same-rows", file: "b.csv", other: "a.csv" },
}

const cell = { line: 4, column: "hairG", found: "x" }
const learnProblems: SamplesOf<LearnProblem> = {
  "too-large": { code: "too-large", mostMb: 2 },
  "columns-missing": { code: "columns-missing", columns: ["row", "level"] },
  "column-unknown": { code: "column-unknown", column: "name" },
  unit: { code: "unit", ...cell, line: 2, unit: "g" },
  cells: { code: "cells", line: 3, cells: 16, columns: 15 },
  word: { code: "word", ...cell, column: "row", known: ["weighing", "strand", "pace"] },
  number: { code: "number", ...cell, found: "", low: 0, high: 5000, isWhole: false },
  "not-of-row": { code: "not-of-row", ...cell, row: "pace" },
  strand: { code: "strand", strand: 2, why: "order" },
  "no-rows": { code: "no-rows" },
  more: { code: "more", count: 3 },
}

describe.each(everyLanguage)("the command in %s", (_, { command }) => {
  it("has a sentence for every code", () => {
    const said = samplesOf(problems).map((each) => say(command.problems, each))
    expect(said.filter((each) => !isSentence(each))).toEqual([])
    const learnt = samplesOf(learnProblems).map((each) => say(command.learn, each))
    expect(learnt.filter((each) => !isSentence(each))).toEqual([])
  })
  it("explains every option of every verb, and no other", () => {
    for (const name of verbNames)
      expect([name, Object.keys(command.verbs[name].options).sort()]).toEqual([
        name,
        [...verbs[name].options].sort(),
      ])
  })
})
