import { sessionStore } from "../../session/sessionStore"

/** From a screen that waits for foils to the map where they are drawn. */
export const ToPlacement = ({ label }: { label: string }) => (
  <button
    type="button"
    className="button strong"
    onClick={() => sessionStore.setState({ screen: "placement" })}
  >
    {label}
  </button>
)
