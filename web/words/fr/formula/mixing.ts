import type { Range } from "../../../../geometry/hair/tradeFigures"
import type { Consistency } from "../../../../presets/formula/consistency"
import { visitWeeks } from "../../../../presets/formula/developers"
import type { MixReason } from "../../../core/bowls/proposeMixes"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { AdditiveCode } from "../../../core/mixing/additives"
import type { BlendProblem } from "../../../core/mixing/blend"
import type { DeveloperReason, GentleReason, Stage, WeakerOffer } from "../../../core/mixing/developer"
import type { MixNote, MixProblem } from "../../../core/mixing/mix"
import type { PouredBottle, PouringCode } from "../../../core/mixing/pouring"
import { type Sentences, say } from "../../say"
import type { Tools } from "../../tools"

/** What this chapter says in the words of others. */
export type FoilNames = {
  foilCount(count: number, piece?: Piece): string
  foils(numbers: readonly number[], piece?: Piece): string
}

/** The mixes of a plan and their bowls: strength, ratio, grams, and why. */
export const mixing = (t: Tools, { foilCount, foils }: FoilNames) => {
  const blend = blendProblems(t)
  return {
    name: (letter: string) => `Mélange ${letter}`,
    remove: (letter: string) => `Retirer le mélange ${letter}`,
    add: (letter: string) => `Ajouter le mélange ${letter}`,
    product: "Produit, avec fiche",
    otherProduct: "ou un autre, par nom",
    developer: "Oxydant",
    vol: ({ volume, percent }: { volume: number; percent: number }) =>
      `${t.number(volume)} vol, ${t.number(percent, 1)} %`,
    ratio: "Décolorant pour oxydant, en poids",
    parts: (parts: number) => `1 : ${t.number(parts)}`,
    developerParts: "Oxydant pour 1 part de décolorant",
    additive: "Additif",
    moveFoil: "Passer une papillote à un autre mélange",
    foilIn: ({ foil, piece, kind, place }: { foil: number; piece: Piece; kind: string; place: string }) =>
      `${t.capital(foils([foil], piece))} : ${kind}, ${place}`,

    consistencies: consistencyWords,
    /** How the foils of a mix want it, and the button that takes that ratio. */
    wants: ({
      foils: count,
      consistency,
      parts,
    }: {
      foils: number
      consistency: Consistency
      parts: number
    }) => `${foilCount(count)} : ${consistencyWords[consistency]}, 1 : ${t.number(parts)}`,
    mixSo: (parts: number) => `Mélanger 1 : ${t.number(parts)}`,

    noSheet: "Pas de fiche pour ce produit : son propre mode d’emploi décide.",
    suggested: ({ volume }: { volume: number }) => `Proposé : ${t.number(volume)} vol.`,
    use: (volume: number) => `Prendre ${t.number(volume)} vol`,
    why: developerReasons(t),
    weaker: weakerWords(t),
    visit: ({ visit, fromLevel, toLevel, volume }: Stage & { visit: number }) =>
      visit === 1
        ? `Aujourd’hui : de la hauteur ${t.number(fromLevel)} à ${t.number(toLevel)} avec ${t.number(volume)} vol.`
        : `Séance ${t.whole(visit)}, après ${t.spread(t.whole(visitWeeks.range[0]), t.whole(visitWeeks.range[1]))} semaines et une fois les cheveux contrôlés : de la hauteur ${t.number(fromLevel)} à ${t.number(toLevel)} avec ${t.number(volume)} vol.`,

    visits: {
      title: (count: number) => t.count(count, { one: "# séance", other: "# séances" }),
      today: (level: number) => `Prévoir la hauteur ${t.number(level)} aujourd’hui, et la prochaine séance`,
      /** The plan of the second visit: what it is called, and what stands in its note. */
      name: (plan: string) => `${plan}, séance 2`,
      after: ({
        plan,
        day,
        toLevel,
        volume,
      }: {
        plan: string
        day: string
        toLevel: number
        volume: number
      }) =>
        `Séance 2, après « ${plan} » du ${t.date(day)}. D’abord regarder les cheveux et saisir leur hauteur ; la hauteur visée est ${t.number(toLevel)}, avec ${t.number(volume)} vol au plus.`,
      stored: ({ name, day }: { name: string; day: string }) =>
        `La séance 2 est dans vos plans : ${name}, à partir du ${t.date(day)} (${t.whole(visitWeeks.range[0])} semaines, pratique courante). Les questions de santé sont reposées ce jour-là.`,
      open: "Ouvrir la séance 2",
      undo: "Défaire les deux",
      notStored: (why: string) =>
        `Rien n’a été modifié : le plan de la séance 2 n’a pas été enregistré. ${why}`,
      /** What is written down for the visits after this one, in the note of the plan. */
      note: ({ toLevel, volume }: { toLevel: number; volume: number }) =>
        `Prochaine séance, après ${t.spread(t.whole(visitWeeks.range[0]), t.whole(visitWeeks.range[1]))} semaines : contrôler les cheveux, puis hauteur ${t.number(toLevel)} avec ${t.number(volume)} vol.`,
    },

    suggestions: {
      title: (count: number) =>
        t.count(count, {
          one: "Un mélange proposé d’après la consultation",
          other: "# mélanges proposés d’après la consultation",
        }),
      use: "Prendre cette proposition",
      mix: ({ volume, percent, parts, foils: numbers }: Suggestion) =>
        `${t.number(volume)} vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)} (${foils(numbers)})`,
      why: {
        ...developerReasons(t),
        "no-sheet": ({ product }) => `Pas de fiche pour ${product} : son propre mode d’emploi décide.`,
        consistency: ({ consistency }) => `Consistance : ${consistencyWords[consistency]}.`,
        joined: "Les quantités trop petites pour un bol à part rejoignent un autre mélange.",
      } satisfies Sentences<MixReason>,
    },

    unused: (letter: string) => `Aucune papillote n’utilise encore le mélange ${letter}.`,
    wanted: ({
      foils: count,
      piece,
      mix,
      wantedG,
    }: {
      foils: number
      piece: Piece
      mix: string
      wantedG: Range
    }) =>
      t.count(count, {
        one: `${foilCount(count, piece)} utilise le mélange ${mix} : ${t.gramsRange(wantedG)} sur les cheveux ; le bol est prévu au chiffre haut.`,
        other: `${foilCount(count, piece)} utilisent le mélange ${mix} : ${t.gramsRange(wantedG)} sur les cheveux ; les bols sont prévus au chiffre haut.`,
      }),
    mixed: ({ mixedG, wasteG }: { mixedG: number; wasteG: Range }) =>
      `${t.grams(mixedG)} mélangés, dont ${t.gramsRange(wasteG)} restent dans le bol et le pinceau ou en surplus.`,
    cost: (amount: number) => `Coût : ${t.fixed(amount, 2)}.`,
    strength: ({ volume, percent, percentWw, onHeadPercent }: Strength) =>
      `${t.number(volume)} vol se vend comme ${t.number(percent, 1)} % (calculé ${t.number(percentWw)} % en poids ; les étiquettes varient) ; ${t.number(onHeadPercent, 1)} % une fois mélangé.`,

    bowls: {
      title: (count: number) => (count === 0 ? "Bols" : t.count(count, { one: "# bol", other: "# bols" })),
      none: "Pas encore de papillotes. Leurs bols s’afficheront ici.",
      toPlacement: "Tracer",
    },
    bowl: {
      when: (minute: number) => `à mélanger minute ${t.whole(minute)}`,
      foils: (numbers: readonly number[], piece: Piece) => t.capital(foils(numbers, piece)),
      lightener: "Décolorant",
      developer: "Oxydant",
      strength: ({ volume, percent, parts }: { volume: number; percent: number; parts: number }) =>
        `${t.number(volume)} vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}`,
      byVolume: (ml: number) => `Oxydant en volume : ${t.number(ml)} mL`,
      grams: (grams: number) => `${t.number(grams, 1)} g`,
    },
    /** A mix in one line, before it is changed. */
    line: ({ product, volume, percent, parts, foils: count }: MixLine) =>
      `${product}, ${t.number(volume)} vol (${t.number(percent, 1)} %), 1 : ${t.number(parts)}, ${foilCount(count)}`,
    change: "Modifier",
    changeThis: (letter: string) => `Modifier le mélange ${letter}`,
    title: "Mélanges",
    poured: pouringWords(t),
    blend,
    additives: additiveWords(t),
    problem: mixProblems(t),
    note: mixNotes(t),
  }
}

type MixLine = { product: string; volume: number; percent: number; parts: number; foils: number }
type Suggestion = { volume: number; percent: number; parts: number; foils: readonly number[] }
type Strength = { volume: number; percent: number; percentWw: number; onHeadPercent: number }

const consistencyWords: Record<Consistency, string> = {
  thick: "épaisse",
  creamy: "comme un yaourt épais",
  loose: "fluide",
}

const levels = (t: Tools, count: number) => t.count(count, { one: "# ton", other: "# tons" })

const developerReasons = (t: Tools) => {
  return {
    "lift-printed": ({ liftLevels, volume, printed }) =>
      `${levels(t, liftLevels)} à éclaircir ; la fiche produit indique ${t.spread(t.number(printed.low), t.number(printed.high))} pour ${t.number(volume)} vol.`,
    "lift-expected": ({ liftLevels, volume, weakerVolume }) =>
      `${levels(t, liftLevels)} à éclaircir ; ${t.number(weakerVolume)} vol ne devrait pas y arriver dans le temps max, ${t.number(volume)} vol si.`,
    "not-in-one-visit": ({ liftLevels, volume, visits }) =>
      `${levels(t, liftLevels)} : trop pour le temps max avec ${t.number(volume)} vol, selon l’estimation. Prévoir ${t.whole(visits)} séances et réévaluer les cheveux entre elles.`,
    "more-than-one-visit": ({ liftLevels, mostLevels, volume, visits }) =>
      `${levels(t, liftLevels)} : plus qu’une séance, jusqu’à ${t.number(mostLevels)} avec ${t.number(volume)} vol, l’oxydant le plus fort utilisé ici. Prévoir ${t.whole(visits)} séances et réévaluer les cheveux entre elles.`,
    "level-now-unknown": "Hauteur actuelle non saisie. Saisissez-la avant de choisir un oxydant.",
    "target-unknown": "Hauteur visée non saisie. Saisissez-la avant de choisir un oxydant.",
    "no-lift-printed": ({ product }) =>
      `${product} n’indique aucun ton d’éclaircissement. Saisissez ceux du pot.`,
    "target-beyond-scale": ({ level, lightestLevel }) =>
      `La hauteur visée ${t.number(level)} dépasse l’échelle. Choisissez ${t.number(lightestLevel)} ou moins.`,
    "target-darker": ({ fromLevel, toLevel }) =>
      `La hauteur visée ${t.number(toLevel)} est plus foncée que les cheveux (${t.number(fromLevel)}). Un décolorant ne peut pas foncer : choisissez une hauteur plus claire ou une mèche plus foncée.`,
    "at-target": ({ level }) =>
      `Les cheveux sont déjà à la hauteur ${t.number(level)}. Il leur faut une patine, pas d’éclaircissement.`,
    "no-lift-allowed": ({ product }) =>
      `${product} n’indique aucun éclaircissement avec un oxydant permis ici. Choisissez un autre produit.`,
  } satisfies Sentences<DeveloperReason>
}

const gentleWords: Record<GentleReason, string> = {
  hairline: "à la lisière, les cheveux sont fins et s’éclaircissent en premier",
  fine: "les cheveux fins s’éclaircissent et s’étirent plus tôt",
  porous: "les cheveux poreux réagissent plus vite",
  lightened: "les cheveux déjà éclaircis sont plus poreux",
}

const weakerWords =
  (t: Tools) =>
  ({ volume, reasons, shortByLevels }: WeakerOffer) => {
    const why = t.and(reasons.map((reason) => gentleWords[reason]))
    return shortByLevels > 0
      ? `Ou ${t.number(volume)} vol : ${why}, mais il manquera ${levels(t, shortByLevels)} pour la hauteur visée.`
      : `Ou ${t.number(volume)} vol : ${why}.`
  }

const blendProblems = (t: Tools) =>
  ({
    "no-bottles": "saisissez au moins un flacon, par exemple 12,3.",
    "bottle-percent": ({ percent }) => `${t.number(percent)} % n’est pas un titre ; saisissez de 0 à 100.`,
    "want-percent": ({ percent }) => `${t.number(percent)} % n’est pas un titre ; saisissez de 0 à 100.`,
    "no-amount": ({ grams }) =>
      `${t.number(grams)} g n’est pas une quantité ; saisissez des grammes au-dessus de 0.`,
    "want-too-weak": ({ wantPercent, weakestPercent }) =>
      `${t.number(wantPercent)} % est plus faible que le flacon le plus faible, ${t.number(weakestPercent)} % ; ajoutez un flacon plus faible.`,
    "want-too-strong": ({ wantPercent, strongestPercent }) =>
      `${t.number(wantPercent)} % est plus fort que le flacon le plus fort, ${t.number(strongestPercent)} % ; choisissez un titre plus faible.`,
  }) satisfies Sentences<BlendProblem>

const pouringWords = (t: Tools) => {
  const bottle = ({ volume, percent, grams }: PouredBottle) =>
    `${t.number(grams, 1)} g à ${t.number(volume)} vol (${t.number(percent, 1)} %)`
  return {
    poured: ({ bottles }) => `Oxydant en poids : ${bottles.map(bottle).join(" + ")}.`,
    "not-poured": ({ volume, problem }) =>
      `${t.number(volume)} vol ne peut pas s’obtenir avec vos flacons : ${say<BlendProblem>(blendProblems(t), problem)}`,
  } satisfies Sentences<PouringCode>
}

const additiveWords = (t: Tools) =>
  ({
    "instead-of-developer": ({ grams, name }) =>
      `${t.number(grams, 1)} g ${name}, à la place d’autant d’oxydant : le dosage reste.`,
    "beside-developer": ({ grams, name, restParts }) =>
      `${t.number(grams, 1)} g ${name}, en plus de l’oxydant : 1 g de décolorant pour ${t.number(restParts)} g du reste.`,
  }) satisfies Sentences<AdditiveCode>

const mixProblems = (t: Tools) => {
  const said = ({
    product,
    lightener,
    developer,
  }: {
    product: string
    lightener: number
    developer: number
  }) => `${product}, dosage ${t.number(lightener)} : ${t.number(developer)}`
  return {
    "ratio-parts": (ratio) =>
      `${said(ratio)} : saisissez des parts au-dessus de 0, décolorant d’abord, par exemple 1 : 2.`,
    "ratio-upside-down": (ratio) =>
      `${said(ratio)} : plus de décolorant que d’oxydant. Saisissez le décolorant d’abord, ${t.number(ratio.developer)} : ${t.number(ratio.lightener)}.`,
    "no-strength": ({ product, percent }) =>
      `${product}, oxydant : ${t.number(percent)} % n’est pas un titre ; saisissez de 3 à 12 %.`,
    "scale-step": ({ grams }) =>
      `Balance : ${t.number(grams)} g n’est pas un pas de balance ; saisissez 0,1 – 0,5 – 1 – 2 ou 5 g.`,
    "foil-grams": ({ foil, lowG, highG }) =>
      `Papillote ${foil} : de ${t.number(lowG)} à ${t.number(highG)} g de produit ; saisissez 0 g ou plus, le plus bas d’abord.`,
    "foil-minutes": ({ foil, minutes }) =>
      `Papillote ${foil} : ${t.number(minutes)} minutes de placement ; saisissez 0 minute ou plus.`,
  } satisfies Sentences<MixProblem>
}

const mixNotes = (t: Tools) =>
  ({
    "pot-life-assumed": ({ product, minutes }) =>
      `${product} n’indique pas combien de temps dure un mélange ; ${t.minutes(minutes)} supposées (pratique courante).`,
    "foil-outlasts-bowl": ({ foil, minutes }) =>
      `Papillote ${foil} : son placement dure plus que les ${t.minutes(minutes)} d’un mélange. Divisez-la en deux.`,
    "off-ratio": ({ scaleStepG, parts, wantedParts }) =>
      `Au pas de ${t.number(scaleStepG)} g, le bol arrive à 1 : ${t.number(parts)} au lieu de 1 : ${t.number(wantedParts)}. Une balance plus fine tient le dosage.`,
  }) satisfies Sentences<MixNote>
