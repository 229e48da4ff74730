/** Rich text and other content as elements. Texts are data: nothing of a file reaches the page as HTML. */
import type { ReactNode } from 'react';
import type { Block, Content, Inline, RichText } from '../../../core/quiz';
import { type Teller, useTeller } from './teller';
import { type Links, useLinks } from './use-links';

const inlines = (list: readonly Inline[], teller: Teller, links: Links): ReactNode[] =>
  list.map((each, i): ReactNode => {
    switch (each.t) {
      case 'text':
        return each.text;
      case 'break':
        return <br key={i} />;
      case 'value':
        return (
          // Numbers stand in figures of one width; names and threads read as words.
          <span
            key={i}
            className={teller.si(each.name) === undefined ? 'said-value' : 'mono said-value'}
            data-value={each.name}
            data-si={teller.si(each.name)}
          >
            {teller.value(each.name, each.figures)}
          </span>
        );
      case 'strong':
        return <strong key={i}>{inlines(each.of, teller, links)}</strong>;
      case 'em':
        return <em key={i}>{inlines(each.of, teller, links)}</em>;
      case 'link':
        return (
          <button key={i} type="button" className="link" onClick={() => links.follow(each.target)}>
            {inlines(each.of, teller, links)}
          </button>
        );
    }
  });

const blocks = (list: readonly Block[], teller: Teller, links: Links): ReactNode[] =>
  list.map((block, i): ReactNode => {
    if (block.t === 'p') return <p key={i}>{inlines(block.of, teller, links)}</p>;
    if (block.t === 'note')
      return (
        <blockquote key={i} className="said-note">
          {blocks(block.of, teller, links)}
        </blockquote>
      );
    const items = block.items.map((item, k) => <li key={k}>{blocks(item, teller, links)}</li>);
    return block.ordered ? <ol key={i}>{items}</ol> : <ul key={i}>{items}</ul>;
  });

/** Paragraphs, lists and notes. */
export function Rich({ rich }: { readonly rich: RichText }) {
  const teller = useTeller();
  const links = useLinks();
  return <div className="said">{blocks(rich, teller, links)}</div>;
}

/** Content that may be rich text, else one paragraph. */
export function Said({ content }: { readonly content: Content }) {
  const teller = useTeller();
  if ('rich' in content) return <Rich rich={content.rich} />;
  return (
    <div className="said">
      <p>{teller.text(content)}</p>
    </div>
  );
}

/** Content as a run of words, for labels: links and paragraphs would have no place there. */
export function Words({ content }: { readonly content: Content }) {
  return <>{useTeller().text(content)}</>;
}
