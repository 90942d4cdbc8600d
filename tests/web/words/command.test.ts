import { describe, expect, it } from "vitest"
import { verbNames, verbs } from "../../../web/command/verbs"
import type { ClassProblem } from "../../../web/core/classes/classTable"
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
  "not-a-technique": { code: "not-a-technique", file: "x", known: ["a", "b"] },
  "not-a-model": { code: "not-a-model", file: "x", known: ["a", "b"] },
  "names-missing": { code: "names-missing" },
  "folder-out-missing": { code: "folder-out-missing" },
  "plan-out-missing": { code: "plan-out-missing" },
  "learner-missing": { code: "learner-missing" },
  "table-out-alone": { code: "table-out-alone" },
  "learner-twice": { code: "learner-twice", file: "x" },
  "within-unusable": { code: "within-unusable", found: "depth", known: ["hairline", "depth"] },
  "no-room": { code: "no-room", name: "x", learner: null },
  "cannot-write-one": { code: "cannot-write-one", path: "x", written: ["a"] },
}

const classProblems: SamplesOf<ClassProblem> = {
  "too-large": { code: "too-large", mostMb: 1 },
  "columns-missing": { code: "columns-missing", columns: ["name", "file"] },
  "column-twice": { code: "column-twice", column: "name" },
  "no-rows": { code: "no-rows" },
  "cell-empty": { code: "cell-empty", line: 3, column: "height" },
  "no-file-name": { code: "no-file-name", line: 3, found: "??" },
  twice: { code: "twice", line: 3, first: 2, column: "name", found: "A.B." },
  "no-number": { code: "no-number", line: 3, column: "height", found: "12 cm" },
  measures: { code: "measures", line: 3 },
  "no-hairline": { code: "no-hairline", line: 3, found: "wavy", known: ["round", "peaked"] },
  "head-size": {
    code: "head-size",
    line: 3,
    fault: { measure: "lengthMm", mm: 19, least: 170, greatest: 210 },
  },
  "not-in-class": { code: "not-in-class", line: 3, found: "X.Y." },
  "learner-without-file": { code: "learner-without-file", line: 3, name: "A.B.", found: "ab.json" },
  "file-without-learner": { code: "file-without-learner", found: "ab.json" },
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
    const ofClass = samplesOf(classProblems).map((each) => say(command.classes, each))
    expect(ofClass.filter((each) => !isSentence(each))).toEqual([])
  })
  it("explains every option of every verb, and no other", () => {
    for (const name of verbNames)
      expect([name, Object.keys(command.verbs[name].options).sort()]).toEqual([
        name,
        [...verbs[name].options].sort(),
      ])
  })
})
