/** A menu that opens under its button and closes when focus or a press goes elsewhere. */
import { type ReactNode, useEffect, useRef } from 'react';
import { Icon } from './icons';

interface Props {
  readonly name: string;
  readonly side: 'left' | 'right';
  /** Drawn in the name's place where room is short; the name is still read out and shown at rest of the pointer. */
  readonly icon?: string;
  /** Classes of the button. */
  readonly look?: string;
  /** Folds when this changes: a choice has been made. */
  readonly chosen?: string;
  /** Called when it opens: what it holds may be fetched then. */
  readonly onOpen?: () => void;
  readonly children: ReactNode;
}

export function Menu({ name, side, icon, look = 'button plain tool', chosen, onOpen, children }: Props) {
  const box = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (box.current !== null) box.current.open = false;
  }, [chosen]);
  useEffect(() => {
    const leave = (event: Event): void => {
      const menu = box.current;
      const target = event.target as Node;
      // A press on a word of the menu moves the focus to the stage around it: that is no leaving.
      if (menu === null || !menu.open || menu.contains(target) || target.contains(menu)) return;
      // After the event: Chromium does not survive a fold in the middle of a change of focus.
      setTimeout(() => (menu.open = false));
    };
    document.addEventListener('pointerdown', leave);
    document.addEventListener('focusin', leave);
    return () => {
      document.removeEventListener('pointerdown', leave);
      document.removeEventListener('focusin', leave);
    };
  }, []);
  return (
    <details
      ref={box}
      className={`tool-more ${side}`}
      onToggle={(event) => {
        if (event.currentTarget.open) onOpen?.();
      }}
    >
      <summary className={look} {...(icon === undefined ? {} : { title: name })}>
        {icon !== undefined && <Icon name={icon} />}
        <span className={icon === undefined ? '' : 'visually-hidden'}>{name}</span>
        <Icon name="down" size={14} />
      </summary>
      <div className="tool-menu">{children}</div>
    </details>
  );
}
