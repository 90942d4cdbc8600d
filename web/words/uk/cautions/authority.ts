import type { Decider, Source } from "../../../core/cautions/rules/rule"

export const deciders: Record<Decider, string> = {
  law: "закон і етикетка",
  maker: "інструкція виробника",
  doctor: "лікар клієнта",
  colourist: "колорист",
}

/** Citations: the names of what is cited are not translated. */
export const sources: Record<Source, string> = {
  "common-practice": "поширена практика, без джерела",
  "label-words":
    "текст етикетки за Регламентом (ЄС) № 1223/2009, Додаток III, за переліком Tukes (Фінляндія)",
  "label-words-and-trade-body":
    "текст етикетки за Регламентом (ЄС) № 1223/2009, Додаток III, за переліком Tukes (Фінляндія); National Hair and Beauty Federation (Велика Британія)",
  "legal-strength":
    "Регламент (ЄС) № 1223/2009, Додаток III, позиція 12(a), у редакції Регламенту (ЄС) 2019/831",
  "alert-test-hours":
    "National Hair and Beauty Federation (Велика Британія): щонайменше 48 годин; FDA, Hair dyes: 2 дні, щоразу",
  "trade-body": "National Hair and Beauty Federation (Велика Британія)",
  eyes: "FDA, Hair dyes: не наносити на брови та вії; текст етикетки про очі",
  "persulfates-at-work":
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; HSE, COSHH and hairdressers",
  asthma:
    "Cosmetic Ingredient Review, Int J Toxicol 2001;20 Suppl 3:7-21; ANSES (Франція), за фаховою пресою: припинити й направити до лікаря",
  "dye-diffusion":
    "J Soc Cosmet Chem 1993;44:358, Table III: після пів години освітлювача барвник проникає приблизно в 13 разів швидше",
  "heat-burns":
    "Ann Dermatol Venereol 2018;145:359-64; J Clin Med 2024;13:3542: опіки шкіри голови від освітлювача й тепла",
  "product-sheet": "інструкція виробника, як уведено в картці засобу",
}
