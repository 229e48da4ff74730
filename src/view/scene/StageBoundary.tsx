/** Catches what the drawing throws, so that a driver's fault does not take the lists along. */
import { Component, type ReactNode } from 'react';

interface Props {
  readonly onError: () => void;
  readonly children: ReactNode;
}

export class StageBoundary extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override componentDidCatch(): void {
    this.props.onError();
  }

  override render(): ReactNode {
    return this.state.failed ? null : this.props.children;
  }
}
