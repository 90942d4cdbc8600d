import type { RefusalCode } from "../../../core/document/refusal"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { refusals as english } from "../../en/problems/refusals"
import { type Sentences, say } from "../../say"
import { inDative } from "../common/declined"
import { pieces } from "../common/pieces"
import { working } from "../placement/working"
import { hairlineFaults } from "./faults"

/** Why a change cannot be, each a whole sentence. */
export const refusals: typeof english = (t, problem, names) => {
  const { directions, sides } = names
  const { starts } = working(t, names)
  const named = (section: SectionNameCode) => t.capital(say<SectionNameCode>(names.sectionName, section))
  const all = (sections: readonly SectionNameCode[]) => t.and(sections.map(named))
  const behind = (section: SectionNameCode) => inDative(t, section)
  const between = (sections: readonly SectionNameCode[]) => t.and(sections.map(behind))
  const sentences: Sentences<RefusalCode> = {
    "too-short": "Zu kurz zum Scheiteln: eine längere Linie zeichnen.",
    "outside-hairline": "Dort wächst kein Haar: innerhalb der Haarlinie zeichnen.",
    "crosses-itself": "Ein Scheitel kann sich nicht selbst kreuzen: neu zeichnen.",

    problem: ({ problem: found }) => t.capital(`${problem(found)}.`),
    "section-problem": ({ section, problem: found }) => `${named(section)}: ${problem(found)}.`,
    "divider-problem": ({ divider, problem: found }) => `Abteillinie ${t.whole(divider)}: ${problem(found)}.`,
    "too-many-sections": ({ most }) => `Ein Plan fasst höchstens ${t.whole(most)} Partien.`,
    hairline: ({ fault }) => t.capital(`${hairlineFaults[fault]}.`),
    "break-the-pair": ({ section, because }) =>
      `${say(sentences, because)} Das Paar auflösen, um nur eine Partie zu ändern: ${named(section)}.`,

    "no-place-behind": ({ behindMm }) =>
      `Hinter der Haarlinie: Keine Stelle ${t.mm(behindMm, 1)} dahinter liegt hinter dieser.`,
    "never-so-long": ({ wantedMm }) => `Länge: Ein Scheitel kann dort nicht ${t.mm(wantedMm, 1)} lang sein.`,
    "only-so-long": ({ madeMm, wantedMm }) =>
      `Länge: Nur ${t.number(madeMm)} von ${t.mm(wantedMm, 1)} liegen innerhalb der Haarlinie. Zuerst verschieben oder weniger wählen.`,
    "off-hairline": "Dort kann sie der Haarlinie nicht folgen. Zuerst verschieben.",
    "no-direction": ({ direction }) =>
      `Kein Scheitel läuft dort ${directions[direction]}. Zuerst verschieben.`,
    "no-angle": ({ degrees }) =>
      `Winkel: Kein Scheitel läuft dort in ${t.whole(degrees)}°. Zuerst verschieben.`,
    "angle-leaves-hair": ({ degrees }) =>
      `Winkel: Bei ${t.whole(degrees)}° würde der Scheitel das Haar verlassen. Zuerst kürzen oder verschieben.`,
    "no-start-along": ({ side, wantedMm }) =>
      `Ab Stirnmitte, ${sides[side]}: Der Scheitel kann nicht ${t.mm(wantedMm, 1)} entlang der Haarlinie beginnen. Zuerst näher an die Haarlinie bringen oder dorthin ziehen.`,
    "divider-runs-along": ({ section }) =>
      `${named(section)}: Die Abteillinie läuft daran entlang, kein Schnitt trennt die beiden. Verschieben, dünner machen oder so lassen.`,

    "thinning-does-not-part": "Dünner machen trennt die beiden nicht. Eine davon verschieben.",
    "one-foil-does": "Eine Folie ist breit genug für diese Partie.",
    "nowhere-to-paste":
      "Dahinter ist kein freies Haar. Verschieben, was dort ist, oder in einen anderen Plan einfügen.",
    "paired-already": ({ section }) =>
      `${named(section)} gehört schon zu einem Paar. Das Paar auflösen, um noch einmal zu spiegeln.`,

    "no-room-behind": "Dahinter ist kein Platz für eine weitere.",
    "no-room-on-other-side":
      "Auf der anderen Seite ist kein Platz für eine weitere. Das Paar auflösen, um mit einer weiterzumachen.",
    "no-room-for-stack": ({ section }) =>
      `Hinter ${behind(section)} ist kein Platz. Nach vorn verschieben oder der Haarlinie folgen.`,
    "stack-ends": ({ section, fits, asked }) =>
      t.count(fits, {
        one: `Nur # von ${t.whole(asked)} passt hinter ${behind(section)}: Dort endet das Haar.`,
        other: `Nur # von ${t.whole(asked)} passen hinter ${behind(section)}: Dort endet das Haar.`,
      }),
    "no-hair-for-veil": ({ section }) =>
      `Hinter ${behind(section)} ist kein Haar für einen Schleier. Nach vorn verschieben.`,
    "up-to-hairline": ({ sections }) =>
      t.count(sections.length, {
        one: `${all(sections)} nimmt das Haar bis zur Haarlinie. Zuerst dünner machen oder zurückschieben.`,
        other: `${all(sections)} nehmen das Haar bis zur Haarlinie. Zuerst dünner machen oder zurückschieben.`,
      }),
    "choose-two": "Zwei Folien wählen, um das Haar dazwischen auszulassen.",
    "nothing-between": ({ sections }) =>
      `Zwischen ${between(sections)} ist kein Haar zum Auslassen. Eine von der anderen wegschieben.`,
    "wide-between": ({ mostMm, sections }) =>
      `Zwischen ${between(sections)} liegen mehr als ${t.mm(mostMm)}. Zwei wählen, die nebeneinanderliegen.`,
    "no-room-for": ({ name }) => `Dort ist kein Platz für „${name}“.`,
    "no-room-for-technique": ({ name }) => `Dieser Kopf hat keinen Platz für die Technik „${name}“.`,
    "no-room-for-start": ({ start }) => `Dieser Kopf hat keinen Platz für „${starts[start].name}“.`,
    "start-is-there": ({ start }) => `„${starts[start].name}“ ist schon auf dem Kopf.`,

    "no-new-growth": ({ foil, piece }) =>
      `${pieces(t).names([foil], piece)} hat keinen Nachwuchs, der sich ohne Berührung mit aufgehelltem Haar bestreichen lässt.`,
    "mix-in-use": ({ mix, foils, piece }) =>
      t.count(foils.length, {
        one: `Mischung ${mix} wird von ${pieces(t).names(foils, piece)} genutzt. Ihr zuerst eine andere Mischung geben.`,
        other: `Mischung ${mix} wird von den ${pieces(t).names(foils, piece)} genutzt. Ihnen zuerst eine andere Mischung geben.`,
      }),
    "foil-without-mix": ({ foil, piece }) => `${pieces(t).names([foil], piece)} gehört zu keiner Mischung.`,
  }
  return sentences
}
