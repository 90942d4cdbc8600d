import "./weighing.css"
import { weighingsSeen } from "../../core/weighing/weighingsSeen"
import { useSalon } from "../../session/salon/useSalon"
import { useWords } from "../../session/words"
import { LearntPanel } from "./LearntPanel"
import { StartFile } from "./StartFile"
import { WeighBowl } from "./WeighBowl"
import { WeighingFiles } from "./WeighingFiles"
import { WeighingPicture } from "./WeighingPicture"
import { WeighingRows } from "./WeighingRows"

/** Grams as the salon's own scale shows them, and what is learnt from them. Kept in this browser. */
export function WeighingPanel() {
  const { title } = useWords().weighing
  const { salon } = useSalon()
  const seen = weighingsSeen(salon.weighings, salon.start)
  return (
    <section className="scale" aria-labelledby="scale-title">
      <h2 id="scale-title">{title}</h2>
      <WeighBowl />
      {salon.weighings.length > 0 && (
        <>
          <LearntPanel seen={seen} />
          <WeighingPicture rows={seen.rows} />
          <WeighingRows rows={seen.rows} />
        </>
      )}
      <WeighingFiles weighings={salon.weighings} />
      <StartFile start={salon.start} />
    </section>
  )
}
