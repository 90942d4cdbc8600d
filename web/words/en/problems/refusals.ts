import type { RefusalCode } from "../../../core/document/refusal"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Problem } from "../../../core/fields/problem"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"
import type { CommonWords } from "../common/common"
import { pieces } from "../common/pieces"
import { working } from "../placement/working"
import { hairlineFaults } from "./faults"

/** Why a change cannot be, each a whole sentence. */
export function refusals(
  t: Tools,
  problem: (problem: Problem) => string,
  names: CommonWords,
): Sentences<RefusalCode> {
  const { directions, landmarks, sides } = names
  const faults = t.spelled(hairlineFaults)
  const { starts } = working(t, names)
  const named = (section: SectionNameCode) => say<SectionNameCode>(names.sectionName, section)
  const all = (sections: readonly SectionNameCode[]) => t.and(sections.map(named))
  const sentences: Sentences<RefusalCode> = {
    "too-short": "Too short to part: draw a longer line.",
    "outside-hairline": "No hair grows there: draw inside the hairline.",
    "crosses-itself": "A parting cannot cross itself: draw it again.",

    problem: ({ problem: found }) => t.capital(`${problem(found)}.`),
    "section-problem": ({ section, problem: found }) => t.capital(`${named(section)}: ${problem(found)}.`),
    "divider-problem": ({ divider, problem: found }) =>
      `Section line ${t.whole(divider)}: ${problem(found)}.`,
    "too-many-sections": ({ most }) => `A plan holds at most ${t.whole(most)} sections.`,
    hairline: ({ fault }) => t.capital(`${faults[fault]}.`),
    "break-the-pair": ({ section, because }) =>
      `${say(sentences, because)} Break the pair to change ${named(section)} alone.`,

    "no-place-behind": ({ behindMm }) =>
      `Behind the hairline: no place ${t.mm(behindMm, 1)} behind it lies behind this one.`,
    "never-so-long": ({ wantedMm }) => `Length: a parting cannot be ${t.mm(wantedMm, 1)} long there.`,
    "only-so-long": ({ madeMm, wantedMm }) =>
      `Length: only ${t.number(madeMm)} of ${t.mm(wantedMm, 1)} lie inside the hairline. Move it first, or ask for less.`,
    "off-hairline": "It cannot follow the hairline there. Move it first.",
    "no-direction": ({ direction }) => `No parting runs ${directions[direction]} there. Move it first.`,
    "no-angle": ({ degrees }) => `Angle: no parting runs at ${t.whole(degrees)}° there. Move it first.`,
    "angle-leaves-hair": ({ degrees }) =>
      `Angle: at ${t.whole(degrees)}° the parting would leave the hair. Make it shorter or move it first.`,
    "no-start-along": ({ side, wantedMm }) =>
      `From ${landmarks["centre front"]}, ${sides[side]}: the parting cannot start ${t.mm(wantedMm, 1)} along the hairline. Bring it nearer to the hairline first, or drag it there.`,
    "divider-runs-along": ({ section }) =>
      t.capital(
        `${named(section)}: the section line runs along it, so no cut parts the two. Move it, make it thinner, or leave it.`,
      ),

    "thinning-does-not-part": "Making it thinner does not part the two. Move one of them.",
    "one-foil-does": "One foil is wide enough for this section.",
    "nowhere-to-paste": "There is no free hair behind. Move what is there, or paste into another plan.",
    "paired-already": ({ section }) =>
      t.capital(`${named(section)} is one of a pair already. Break the pair to mirror it again.`),

    "no-room-behind": "There is no room for another behind this one.",
    "no-room-on-other-side":
      "There is no room for another on the other side. Break the pair to go on with one.",
    "no-room-for-stack": ({ section }) =>
      `There is no room behind ${named(section)}. Move it forward, or follow the hairline.`,
    "stack-ends": ({ section, fits, asked }) =>
      `Only ${t.whole(fits)} of ${t.whole(asked)} fit behind ${named(section)}: the hair ends there.`,
    "no-hair-for-veil": ({ section }) => `No hair behind ${named(section)} for a veil. Move it forward.`,
    "up-to-hairline": ({ sections }) =>
      t.capital(
        t.count(sections.length, {
          one: `${all(sections)} takes the hair up to the hairline. Make it thinner or move it back first.`,
          other: `${all(sections)} take the hair up to the hairline. Make them thinner or move them back first.`,
        }),
      ),
    "choose-two": "Choose two foils to leave the space between them.",
    "nothing-between": ({ sections }) =>
      `There is no hair between ${all(sections)} to leave out. Move one of them away from the other.`,
    "wide-between": ({ mostMm, sections }) =>
      `More than ${t.mm(mostMm)} lie between ${all(sections)}. Choose two that are next to each other.`,
    "no-room-for": ({ name }) => `There is no room for “${name}” there.`,
    "no-room-for-technique": ({ name }) => `This head has no room for the technique “${name}”.`,
    "no-room-for-start": ({ start }) => `This head has no room for “${starts[start].name}”.`,
    "start-is-there": ({ start }) => `“${starts[start].name}” is on the head already.`,

    "no-new-growth": ({ foil, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} has no new growth that can be coated without touching lightened hair.`,
    "mix-in-use": ({ mix, foils, piece }) =>
      t.count(foils.length, {
        one: `Mix ${mix} is used by ${pieces(t).names(foils, piece)}. Give it another mix first.`,
        other: `Mix ${mix} is used by ${pieces(t).names(foils, piece)}. Give them another mix first.`,
      }),
    "foil-without-mix": ({ foil, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} is in none of the mixes.`,
  }
  return sentences
}
