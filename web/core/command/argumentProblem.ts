/** What is wrong with what was typed after the command; `found` is what was typed, null where nothing was. */
export type ArgumentProblem =
  | { code: "unknown-verb"; verb: string; known: readonly string[] }
  | { code: "unknown-option"; option: string; known: readonly string[] }
  | { code: "given-twice"; option: string }
  | { code: "no-value"; option: string }
  | { code: "no-file-expected"; file: string }
  | { code: "one-file-too-many"; file: string }
  | { code: "file-missing" }
  | { code: "not-a-choice"; option: string; known: readonly string[]; found: string | null }
  | { code: "out-missing" }
  | { code: "cannot-write"; path: string }
  | { code: "cannot-read"; file: string }
  | { code: "cannot-read-list"; file: string }
  | { code: "head-choose" }
  | { code: "measure-missing"; option: string }
  | { code: "measure-unusable"; option: string; found: string }
  | { code: "number-missing"; option: "have" | "want" | "grams" }
  | { code: "number-unusable"; option: "have" | "want" | "grams"; found: string }
  | { code: "minutes-unusable"; option: "pace" | "booking"; found: string }
  | { code: "levels-together" }
  | { code: "consent-missing" }
  | { code: "csv-out-missing" }
  | { code: "start-out-missing" }
  | { code: "nothing-to-learn" }
  | { code: "too-few-salons"; salons: number; least: number }
  | { code: "cannot-read-folder"; folder: string }
  | { code: "client-missing" }
  | { code: "client-unknown"; client: string }
  | { code: "client-several"; client: string; ids: readonly string[] }
  | { code: "client-out-missing" }
  | { code: "sure-missing"; name: string; plans: number; files: readonly string[] }
  | { code: "cannot-erase"; path: string }
  | { code: "same-rows"; file: string; other: string }
  | { code: "not-a-technique"; file: string; known: readonly string[] }
  | { code: "not-a-model"; file: string; known: readonly string[] }
  | { code: "names-missing" }
  | { code: "folder-out-missing" }
  | { code: "plan-out-missing" }
  | { code: "learner-missing" }
  | { code: "table-out-alone" }
  | { code: "learner-twice"; file: string }
  | { code: "within-unusable"; found: string; known: readonly string[] }
  | { code: "no-room"; name: string; learner: string | null }
  | { code: "cannot-write-one"; path: string; written: readonly string[] }
