import type { deciders as englishDeciders, sources as englishSources } from "../../en/cautions/authority"

export const deciders: typeof englishDeciders = {
  law: "das Gesetz und das Etikett",
  maker: "die Herstellerangaben",
  doctor: "die Arztpraxis des Gastes",
  colourist: "die Fachkraft",
}

/** Citations: the names of what is cited are not translated. */
export const sources: typeof englishSources = {
  "common-practice": "übliche Praxis, keine Quelle",
  "label-words":
    "Etikettentext der Verordnung (EG) 1223/2009, Anhang III, nach der Liste von Tukes (Finnland)",
  "label-words-and-trade-body":
    "Etikettentext der Verordnung (EG) 1223/2009, Anhang III, nach der Liste von Tukes (Finnland); National Hair and Beauty Federation (UK)",
  "legal-strength":
    "Verordnung (EG) 1223/2009, Anhang III, Eintrag 12(a), ersetzt durch Verordnung (EU) 2019/831",
  "alert-test-hours":
    "National Hair and Beauty Federation (UK): mindestens 48 Stunden; FDA, Hair dyes: 2 Tage, jedes Mal",
  "trade-body": "National Hair and Beauty Federation (UK)",
  eyes: "FDA, Hair dyes: von Brauen und Wimpern fernhalten; Etikettentext zu den Augen",
  "persulfates-at-work":
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; HSE, COSHH and hairdressers",
  asthma:
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; ANSES (Frankreich), nach der Fachpresse: aufhören und ärztlich abklären",
  "dye-diffusion":
    "J Soc Cosmet Chem 1993;44:358, Tabelle III: Nach einer halben Stunde Blondierung dringt Farbstoff etwa 13-mal so schnell ein",
  "heat-burns":
    "Ann Dermatol Venereol 2018;145:359-64; J Clin Med 2024;13:3542: Verbrennungen der Kopfhaut mit Blondierung und Wärme",
  "product-sheet": "die Herstellerangaben, wie auf dem Produktblatt eingegeben",
}
