import { Component, type ReactNode } from "react"
import { PartFault, type PartShape } from "./PartFault"

type Props = { shape: PartShape; onRetry: () => void; children: ReactNode }

/** A part that did not load, or broke while it was drawn, says so in its own place; all others go on. */
export class PartBoundary extends Component<Props, { failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError() {
    return { failed: true }
  }

  private retry = () => {
    this.props.onRetry()
    this.setState({ failed: false })
  }

  override render() {
    return this.state.failed ? (
      <PartFault shape={this.props.shape} onRetry={this.retry} />
    ) : (
      this.props.children
    )
  }
}
