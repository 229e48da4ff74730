/** A question whose answer is out: what is right, how the class answered, how sure it was, and why. */
import type { Shares } from '../../../core/classroom';
import { type Answer, type Certainty, CERTAINTIES, type Item, rightAnswer } from '../../../core/quiz';
import { useSpeech } from '../../bind';
import { Told } from '../learn/AskItem';
import { answerWords, mistakes } from '../learn/answer-words';
import { Picture } from '../learn/Picture';
import { Said } from '../learn/Said';
import { type Teller, useTeller } from '../learn/teller';

interface Props {
  readonly item: Item;
  readonly shares: Shares;
  /** Of a phone: what was answered here; null: nothing. Left out on the instructor's screen. */
  readonly own?: { readonly answer: Answer; readonly certainty: Certainty } | null;
}

export function Revealed({ item, shares, own }: Props) {
  const { t } = useSpeech();
  const teller = useTeller();
  return (
    <div className="class-revealed">
      <div className="ask-prompt">
        <Said content={item.prompt} />
      </div>
      {item.picture !== undefined && <Picture picture={item.picture} />}
      <div>
        <p className="field-name">{t('ask.right-is')}</p>
        <p>
          <strong>{answerWords(teller, item, rightAnswer(item))}</strong>
        </p>
      </div>
      {own != null && (
        <div>
          <p className="field-name">{t('ask.yours')}</p>
          <p>{answerWords(teller, item, own.answer)}</p>
        </div>
      )}
      {own != null && mistakes(item, own.answer).map((why, i) => <Said key={i} content={why} />)}
      <ShareTable item={item} shares={shares} teller={teller} />
      <SureTable shares={shares} />
      {own !== undefined ? (
        <div className="ask-told">
          <Told item={item} given={own ?? { answer: null, certainty: 1 }} />
        </div>
      ) : (
        <div className="ask-told">
          <Said content={item.explain} />
        </div>
      )}
    </div>
  );
}

const percent = (part: number, whole: number): number => (whole === 0 ? 0 : Math.round((100 * part) / whole));

/** Bars are drawn for the eye; the numbers stand beside them. */
export function ShareTable(props: { readonly item: Item; readonly shares: Shares; readonly teller: Teller }) {
  const { item, shares, teller } = props;
  const { t } = teller.speech;
  return (
    <table className="class-shares">
      <caption className="field-name">
        {t('class.shares', { right: shares.right, count: shares.count })}
      </caption>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">{t('class.share-answer')}</th>
          <th scope="col">{t('class.share-count')}</th>
          <th scope="col">{t('class.share-percent')}</th>
        </tr>
      </thead>
      <tbody>
        {shares.rows.map((row, i) => (
          <tr key={i} data-right={row.right}>
            <th scope="row">
              {row.answer === null
                ? t(row.right ? 'class.share-rest-right' : 'class.share-rest-wrong')
                : answerWords(teller, item, row.answer)}
              {row.right && <span className="class-right"> ✓ {t('class.share-right')}</span>}
              <span className="class-bar" aria-hidden="true">
                <span style={{ width: `${percent(row.count, shares.count)}%` }} />
              </span>
            </th>
            <td className="mono">{row.count}</td>
            <td className="mono">{t('class.percent', { value: percent(row.count, shares.count) })}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function SureTable({ shares }: { readonly shares: Shares }) {
  const { t } = useSpeech();
  const all = CERTAINTIES.reduce((sum, each) => sum + shares.byCertainty[each].said, 0);
  if (all === 0) return null;
  return (
    <table className="class-shares">
      <caption className="field-name">{t('class.sure')}</caption>
      <thead>
        <tr className="small">
          <td />
          <th scope="col">{t('quiz.said-count')}</th>
          <th scope="col">{t('class.percent-head')}</th>
          <th scope="col">{t('quiz.said-right')}</th>
        </tr>
      </thead>
      <tbody>
        {CERTAINTIES.map((each) => (
          <tr key={each}>
            <th scope="row">{t(`certainty.${each}`)}</th>
            <td className="mono">{shares.byCertainty[each].said}</td>
            <td className="mono">
              {t('class.percent', { value: percent(shares.byCertainty[each].said, all) })}
            </td>
            <td className="mono">{shares.byCertainty[each].right}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
