// A part of a page that breaks must not take the rest with it: what an entry from elsewhere has shown
// is not this build's own work.
import { Component, type ComponentChildren } from "preact";

interface SafeProps {
  readonly children: ComponentChildren;
  readonly instead: ComponentChildren;
}

export class Safe extends Component<SafeProps, { broken: boolean }> {
  override state = { broken: false };

  override componentDidCatch(): void {
    this.setState({ broken: true });
  }

  override render() {
    return this.state.broken ? this.props.instead : this.props.children;
  }
}
