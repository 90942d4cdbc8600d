import type { Decider, Source } from "../../../core/cautions/rules/rule"

export const deciders = {
  law: "la ley y la etiqueta",
  maker: "las instrucciones del fabricante",
  doctor: "el médico de su cliente",
  colourist: "colorista",
} satisfies Record<Decider, string>

/** Citations: the names of what is cited are not translated. */
export const sources = {
  "common-practice": "práctica común, sin fuente",
  "label-words":
    "texto de etiqueta del Reglamento (CE) 1223/2009, anexo III, según lista de Tukes (Finlandia)",
  "label-words-and-trade-body":
    "texto de etiqueta del Reglamento (CE) 1223/2009, anexo III, según lista de Tukes (Finlandia); National Hair and Beauty Federation (Reino Unido)",
  "legal-strength":
    "Reglamento (CE) 1223/2009, anexo III, entrada 12(a), sustituida por el Reglamento (UE) 2019/831",
  "alert-test-hours":
    "National Hair and Beauty Federation (Reino Unido): al menos 48 horas; FDA, Hair dyes: 2 días, cada vez",
  "trade-body": "National Hair and Beauty Federation (Reino Unido)",
  eyes: "FDA, Hair dyes: lejos de cejas y pestañas; texto de etiqueta sobre los ojos",
  "persulfates-at-work":
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; HSE, COSHH and hairdressers",
  asthma:
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; ANSES (Francia), por la prensa del sector: parar y derivar",
  "dye-diffusion":
    "J Soc Cosmet Chem 1993;44:358, Table III: tras media hora de decolorante, el tinte penetra unas 13 veces más rápido",
  "heat-burns":
    "Ann Dermatol Venereol 2018;145:359-64; J Clin Med 2024;13:3542: quemaduras del cuero cabelludo con decolorante y calor",
  "product-sheet": "las instrucciones del fabricante, como figuran en la ficha de producto",
} satisfies Record<Source, string>
