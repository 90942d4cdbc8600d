import { type PointerEvent, useRef, useState } from "react"
import { type FlatPanel, type PanelPoint, paintedBands } from "../../../../geometry/painted/flatPanel"
import { heightsAcross } from "./heightsAcross"

type Props = {
  panel: FlatPanel
  name: string
  /** The edge that was drawn, as shares of the hair's length at even steps across. */
  onDrawn: (shares: readonly number[]) => void
}

/** A painted panel laid flat, root at the top: an edge drawn across it with a finger, a pen or the mouse is the new one. */
export function FlatPanelDrawing({ panel, name, onDrawn }: Props) {
  const [stroke, setStroke] = useState<readonly PanelPoint[] | null>(null)
  const drawing = useRef<SVGSVGElement>(null)
  const { widthMm, lengthMm } = panel
  const at = ({ clientX, clientY }: PointerEvent): PanelPoint => {
    const box = drawing.current?.getBoundingClientRect()
    if (!box) return [0, 0]
    const [x, y] = [(clientX - box.left) / box.width, (clientY - box.top) / box.height]
    return [Math.min(1, Math.max(0, x)) * widthMm, Math.min(1, Math.max(0, y)) * lengthMm]
  }
  // What was drawn since the last pass of React counts as well.
  const drawn = useRef<PanelPoint[]>([])
  const draw = (event: PointerEvent) => {
    drawn.current.push(at(event))
    setStroke([...drawn.current])
  }
  const finish = () => {
    const shares = heightsAcross(drawn.current, panel)
    if (shares) onDrawn(shares)
    setStroke(null)
  }
  return (
    <svg
      ref={drawing}
      className="painted-panel"
      viewBox={`0 0 ${widthMm} ${lengthMm}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={name}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId)
        drawn.current = []
        draw(event)
      }}
      onPointerMove={(event) => stroke && draw(event)}
      onPointerUp={finish}
      onPointerCancel={() => setStroke(null)}
    >
      {paintedBands(panel).map(({ band, outline }) => (
        <polygon key={band} className={`band ${band}`} points={pointsOf(outline)} />
      ))}
      {stroke && <polyline className="stroke" points={pointsOf(stroke)} vectorEffect="non-scaling-stroke" />}
    </svg>
  )
}

const pointsOf = (outline: readonly PanelPoint[]) =>
  outline.map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`).join(" ")
