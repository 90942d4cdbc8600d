import { ClientHead } from "../../placement/hairline/ClientHead"
import { LandmarkFields } from "../../placement/hairline/LandmarkFields"
import { LandmarkSides } from "../../placement/hairline/LandmarkSides"
import { WornFields } from "../../placement/hairline/WornFields"
import { HairlineChoice } from "../measures/HairlineChoice"
import { HeadSizeFields } from "../measures/HeadSizeFields"
import { WholeHeadFigures } from "../measures/WholeHeadFigures"

/** The head: its size, its hairline and the parting worn, with a picture of it. */
export function HeadStep() {
  return (
    <>
      <HeadSizeFields />
      <ClientHead />
      <HairlineChoice />
      <LandmarkFields>
        <LandmarkSides />
      </LandmarkFields>
      <WornFields />
      <WholeHeadFigures />
    </>
  )
}
