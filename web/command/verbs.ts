import type { CommandWords } from "../words/en/command"
import type { Verb } from "./input/verb"
import { blend } from "./verbs/blend"
import { calibrate } from "./verbs/calibrate"
import { check } from "./verbs/check"
import { clients } from "./verbs/clients"
import { compare } from "./verbs/compare"
import { erase } from "./verbs/erase"
import { exportClient } from "./verbs/exportClient"
import { handout } from "./verbs/handout"
import { head } from "./verbs/head"
import { lay } from "./verbs/lay"
import { learnExport } from "./verbs/learnExport"
import { learnJoin } from "./verbs/learnJoin"
import { measure } from "./verbs/measure"
import { mix } from "./verbs/mix"
import { sheet } from "./verbs/sheet"
import { timing } from "./verbs/timing"
import { validate } from "./verbs/validate"

export type VerbName = keyof CommandWords["verbs"]

export const verbs: Readonly<Record<VerbName, Verb>> = {
  head,
  measure,
  check,
  mix,
  sheet,
  validate,
  blend,
  calibrate,
  timing,
  clients,
  export: exportClient,
  erase,
  "learn export": learnExport,
  "learn join": learnJoin,
  lay,
  handout,
  compare,
}
export const verbNames = Object.keys(verbs) as VerbName[]
