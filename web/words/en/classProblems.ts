import type { ClassProblem } from "../../core/classes/classTable"
import type { Sentences } from "../say"
import type { Tools } from "../tools"

/** What is wrong with the list of a class or of its heads, a row of it by its line. */
export const classProblems = (t: Tools) =>
  ({
    "too-large": ({ mostMb }) => `Expected a list of at most ${t.whole(mostMb)} MB. Is this another file?`,
    "columns-missing": ({ columns }) =>
      `Line 1: ${t.and(columns)} missing. Expected a heading with these columns.`,
    "column-twice": ({ column }) => `Line 1: the column "${column}" is there twice. Keep one.`,
    "no-rows": "The list has no rows under its heading.",
    "cell-empty": ({ line, column }) =>
      `Line ${t.whole(line)}, ${column}: it is empty. Fill it in, or take the line out.`,
    "no-file-name": ({ line, found }) =>
      `Line ${t.whole(line)}, name: "${found}" cannot be the name of a file. Use letters or numbers, at most 80.`,
    twice: ({ line, first, column, found }) =>
      `Line ${t.whole(line)}, ${column}: "${found}" makes the same file as line ${t.whole(first)}. Tell the two apart.`,
    "no-number": ({ line, column, found }) =>
      `Line ${t.whole(line)}, ${column}: expected millimetres above 0, found "${found}".`,
    measures: ({ line }) =>
      `Line ${t.whole(line)}: expected either length, breadth, height or around, over, front-to-nape.`,
    "no-hairline": ({ line, found, known }) =>
      `Line ${t.whole(line)}, hairline: expected ${t.or(known)}, found "${found}".`,
    "head-size": ({ line }) => `Line ${t.whole(line)}: no head has these measures.`,
    "not-in-class": ({ line, found }) =>
      `Line ${t.whole(line)}, name: nobody in the class is "${found}". Write it as in --names.`,
    "learner-without-file": ({ line, name, found }) =>
      found === ""
        ? `Line ${t.whole(line)}, file: ${name} has none. Fill it in, or take the line out.`
        : `Line ${t.whole(line)}, file: "${found}" of ${name} is not among the files named once after the model.`,
    "file-without-learner": ({ found }) => `"${found}" is nobody's in the class. Add a line for it.`,
  }) satisfies Sentences<ClassProblem>
