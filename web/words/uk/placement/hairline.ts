import type { LandmarkMove } from "../../../../geometry/scalp/landmarkMoves"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import type { Tools } from "../../tools"

/** The client's own hairline, the parting usually worn and the swirl of the crown. */
export const hairline = (t: Tools, { landmarkOf, landmarks }: CommonWords): PlacementWords["hairline"] => {
  const told = (mm: number, onward: string, back: string) =>
    mm === 0 ? "" : `${t.mm(Math.abs(mm), 1)} ${mm > 0 ? onward : back}`
  const moved = (move: LandmarkMove | undefined): string => {
    const parts = [
      told(move?.behindMm ?? 0, "вглиб волосся", "назовні"),
      told(move?.towardNapeMm ?? 0, "до карка", "до лоба"),
    ].filter((part) => part !== "")
    return parts.join(", ") || "як у формі"
  }
  return {
    title: "Лінія росту клієнта",
    hint: "Перетягніть орієнтир у будь-якому виді або виберіть його й користуйтеся стрілками: один міліметр, із Shift — п’ять. Намальоване поруч переміщується разом із ним.",
    head: "Голова клієнта",
    shapeOnMap: "Змінити лінію росту на схемі",
    differs: "Де лінія росту клієнта інша",
    intoHair: "Углиб волосся",
    towardsNape: "До карка",
    resetPoint: "Скинути цю точку",
    resetAll: "Скинути все",
    move: "Переміщення",
    moveSides: { both: "Обидва боки", left: "Лише ліворуч", right: "Лише праворуч" },
    landmarkTitle: (name, sides) => t.capital(landmarkOf(name, sides)),
    moved,
    movedNow: ({ name, sides, move }) => `${t.capital(landmarkOf(name, sides))}: ${moved(move)}`,
    inHand: ({ name, move }) => `${landmarks[name]}: ${moved(move)}`,
    offHead: "Це поза головою. Тримайте орієнтир на шкірі голови.",
    stays: (why) => `${why} Лінія росту лишається, як була.`,
    usualParting: "Звичний проділ",
    partings: {
      centre: "По центру",
      left: "Ліворуч",
      right: "Праворуч",
      zigzag: "Зигзаг",
      none: "Немає",
    },
    fromMiddle: "Від середини",
    whorl: "Вихор маківки, вид зверху",
    whorlTurns: {
      clockwise: "За годинниковою",
      anticlockwise: "Проти годинникової",
      none: "Немає",
    },
    whorlHandle: "вихор маківки",
    whorlName: "вихор",
    whorlRefused: "Вихор маківки лежить у волоссі: він лишається, де був.",
  }
}
