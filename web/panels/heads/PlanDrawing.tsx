import type { PlanPicture } from "./planPicture"

/** The picture of a plan or a technique. Its words stand beside it. */
export function PlanDrawing({ picture: { viewBox, paths } }: { picture: PlanPicture }) {
  return (
    <svg viewBox={viewBox} aria-hidden="true">
      {paths.map((path, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the paths of a picture are never put in another order
        <path key={i} {...path} strokeLinecap="round" strokeLinejoin="round" />
      ))}
    </svg>
  )
}
