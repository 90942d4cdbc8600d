import type { TechniquePicture } from "./techniquePicture"

/** The picture of a technique. Its words stand beside it. */
export function TechniqueDrawing({ picture: { viewBox, paths } }: { picture: TechniquePicture }) {
  return (
    <svg viewBox={viewBox} aria-hidden="true">
      {paths.map((path, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the paths of a picture are never put in another order
        <path key={i} {...path} strokeLinecap="round" strokeLinejoin="round" />
      ))}
    </svg>
  )
}
