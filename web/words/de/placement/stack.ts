import type { SectionKind } from "../../../../geometry/section/section"
import type { stack as english } from "../../en/placement/stack"
import { inDative } from "../common/declined"

/** So many more foils behind one. */
export const stack: typeof english = (t, { kinds }) => {
  const total = ({ foils, sections }: { foils: number; sections: number }) => {
    if (foils === sections) return t.count(foils, { one: "# Folie", other: "# Folien" })
    const all = t.count(sections, { one: "# Partie", other: "# Partien" })
    return foils === 0 ? all : `${all}, davon ${t.count(foils, { one: "# Folie", other: "# Folien" })}`
  }
  return {
    title: (section) => `Hinter ${inDative(t, section)} stapeln`,
    allFit: (asked) => t.count(asked, { one: "Sie passt.", other: "Alle # passen." }),
    touching:
      "Abstand 0 mm: Sie liegen Rücken an Rücken und teilen sich Haare an den Rändern. 1 mm hält sie getrennt.",
    bothSides: ({ foils, sections }) =>
      `Auf beiden Seiten, als Paare: insgesamt ${total({ foils, sections })}.`,
    place: ({ fits, asked, sides }) => {
      const those =
        fits < asked && fits > 0
          ? t.count(fits, { one: "Die # passende platzieren", other: "Die # passenden platzieren" })
          : `${t.whole(fits)} platzieren`
      return sides === 2 ? `${those}, auf jeder Seite` : those
    },
    cancelled: "Stapeln abgebrochen",
    total,
    more: "Wie viele dazu",
    bySliding: "Wie viele dazu, durch Schieben",
    oneMore: "Eine mehr",
    oneFewer: "Eine weniger",
    handle: "Wie viele dazu, ab dem letzten Scheitel",
    handleValue: ({ shown, sides }) =>
      sides === 2
        ? t.count(shown, { one: "# dazu auf jeder Seite", other: "# dazu auf jeder Seite" })
        : t.count(shown, { one: "# dazu", other: "# dazu" }),
    handleName: ({ shown, sides }) =>
      sides === 2 ? `${t.whole(shown)} + ${t.whole(shown)} dazu` : `${t.whole(shown)} dazu`,

    gap: "Abstand",
    depthOfEach: "Tiefe pro Stück",
    depthOfKind: (kind) => `Tiefe: ${kinds[kind]}`,
    follow: "Folgt",
    follows: { hairline: "Der Haarlinie", parting: "Diesem Scheitel" },
    eachSecond: "Jede zweite Folie",
    inLine: "In Reihe",
    brick: "Ziegelmuster",
    shift: "Entlang des Scheitels versetzen um",
    alternate: "Im Wechsel mit",
    allTheSame: "Alle gleich",
    alternateKind: (kind: SectionKind) => t.capital(kinds[kind]),
  }
}
