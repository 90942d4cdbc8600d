import type { CommonWords } from "../en/common/common"
import { list } from "../en/placement/list"
import { kindTitles, stepTitles } from "../en/teachingSteps"
import type { Words } from "../en/words"
import type { Tools } from "../tools"
import { cautions } from "./cautions"
import type { Differing } from "./joined"
import { spelledMessage } from "./spelling"
import { techniques } from "./techniques"

/** What American English says in other words, and its messages of data that British English spells otherwise. */
export const differs = (t: Tools, under: Words): Differing<Words> => ({
  cautions: cautions(t, under.cautions),
  chair: { emergencies: { steps: emergencySteps } },
  client: { head: { measures: headMeasures(under.client.head.measures) } },
  command: {
    problems: {
      "measure-missing": ({ option }) => `--${option} is missing: expected millimeters.`,
      "measure-unusable": ({ option, found }) =>
        `--${option}: expected millimeters above 0, found "${found}".`,
    },
    classes: {
      "no-number": ({ line, column, found }) =>
        `Line ${t.whole(line)}, ${column}: expected millimeters above 0, found "${found}".`,
    },
  },
  formula: {
    tone: {
      shows: {
        "level-unknown": "Level reached not known yet: choose the toner at the shampoo bowl.",
        neutralise: spelledMessage(under.formula.tone.shows.neutralise),
      },
      wheel: { neutralises: spelledMessage(under.formula.tone.wheel.neutralises) },
    },
  },
  placement: {
    done: {
      nudge: spelledMessage(under.placement.done.nudge),
      "set-base": spelledMessage(under.placement.done["set-base"]),
    },
    // A row of the list has room for one word.
    list: { whatAndWhere: list(t, withKind(under.common, "teased")).whatAndWhere },
    foot: { fall: { told: spelledMessage(under.placement.foot.fall.told) } },
    toolRail: { tools: { backcomb: "Tease" } },
  },
  plans: {
    bin: { title: (count) => t.count(count, { one: "Trash: # plan", other: "Trash: # plans" }) },
    list: { deleted: (name) => `${name} was deleted. It stays in the trash for 30 days.` },
  },
  sheets: {
    cards: {
      takeHome: { breathing: takeHomeBreathing, testBy: spelledMessage(under.sheets.cards.takeHome.testBy) },
    },
    map: { table: { kinds: { backcomb: "Teased" } } },
  },
  teaching: {
    stepLabels: spelledMessage(under.teaching.stepLabels),
    stepTitles: stepTitles(t, under.common, {
      ...kindTitles,
      backcomb: { one: "Teased section", other: "Teased sections" },
    }),
  },
  techniques: techniques(under.techniques),
})

const withKind = (names: CommonWords, backcomb: string): CommonWords => ({
  ...names,
  kinds: { ...names.kinds, backcomb },
})

type HeadMeasures = Words["client"]["head"]["measures"]

const headMeasures = ({ aroundMm, overMm, heightMm }: HeadMeasures): Differing<HeadMeasures> => ({
  aroundMm: { hint: spelledMessage(aroundMm.hint) },
  overMm: { hint: spelledMessage(overMm.hint) },
  heightMm: { hint: spelledMessage(heightMm.hint) },
})

const takeHomeBreathing = (number: string) =>
  `Trouble breathing, or swelling of face, lips, tongue or throat: use your own epinephrine auto-injector if you have one, call ${number || "your emergency number (_________)"} at once, and lie down unless breathing is hard.`

const emergencySteps: Differing<Words["chair"]["emergencies"]["steps"]> = {
  breathing: {
    pen: "Use the client’s own epinephrine auto-injector now.",
    "second-pen": "No better after 5 minutes: use a second one, if there is one.",
  },
  "hot-foil": { flames: "Flames: fire alarm, fire department, out." },
  faint: {
    "keep-clear": "Keep product away from eyes and mouth. Loosen the cape. Fresh air.",
    "not-breathing": "Not breathing normally: call, start chest compressions, get the defibrillator (AED).",
  },
  swallowed: {
    "not-sick": "Do not make the client vomit.",
    call: "Call Poison Control or the emergency number, with the tub in your hand.",
  },
}
