import type { Decider, Source } from "../../../core/cautions/rules/rule"

export const deciders = {
  law: "la loi et l’étiquette",
  maker: "le mode d’emploi du fabricant",
  doctor: "le médecin de la personne",
  colourist: "le ou la coloriste",
} satisfies Record<Decider, string>

/** Citations: the names of what is cited are not translated. */
export const sources = {
  "common-practice": "pratique courante, sans source",
  "label-words":
    "mentions d’étiquetage du règlement (CE) n° 1223/2009, annexe III, selon la liste de Tukes (Finlande)",
  "label-words-and-trade-body":
    "mentions d’étiquetage du règlement (CE) n° 1223/2009, annexe III, selon la liste de Tukes (Finlande) ; National Hair and Beauty Federation (Royaume-Uni)",
  "legal-strength":
    "règlement (CE) n° 1223/2009, annexe III, entrée 12 a), remplacée par le règlement (UE) 2019/831",
  "alert-test-hours":
    "National Hair and Beauty Federation (Royaume-Uni) : au moins 48 heures ; FDA, Hair dyes : 2 jours, à chaque fois",
  "trade-body": "National Hair and Beauty Federation (Royaume-Uni)",
  eyes: "FDA, Hair dyes : ne pas toucher sourcils ni cils ; mentions d’étiquetage sur les yeux",
  "persulfates-at-work":
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21 ; HSE, COSHH and hairdressers",
  asthma:
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21 ; ANSES (France), par la presse professionnelle : arrêter et orienter vers un médecin",
  "dye-diffusion":
    "J Soc Cosmet Chem 1993;44:358, tableau III : après une demi-heure de décolorant, le colorant pénètre environ 13 fois plus vite",
  "heat-burns":
    "Ann Dermatol Venereol 2018;145:359-64 ; J Clin Med 2024;13:3542 : brûlures du cuir chevelu avec décolorant et chaleur",
  "product-sheet": "le mode d’emploi du fabricant, tel que saisi sur la fiche produit",
} satisfies Record<Source, string>
