/** A phone of the class: its number, the question at hand, what became of the answer. */
import { useEffect, useRef } from 'react';
import type { ClassGreeting, LearnerView } from '../../../core/classroom';
import { createClassCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { AskItem } from '../learn/AskItem';
import { answerWords } from '../learn/answer-words';
import { Said } from '../learn/Said';
import { useTeller } from '../learn/teller';
import { FollowView } from './FollowView';
import { JoinForm } from './JoinForm';
import { LinkLine } from './LinkLine';
import { Revealed } from './Revealed';

export function LearnerScreen({ greeting }: { readonly greeting: ClassGreeting }) {
  const view = useApp((s) => s.class.view);
  return view === null ? <JoinForm greeting={greeting} /> : <Seated view={view} />;
}

function Seated({ view }: { readonly view: LearnerView }) {
  const { t } = useSpeech();
  const { seat, name, settings } = view;
  const here = t(settings.mode === 'team' ? 'class.team-here' : 'class.number-here', { number: seat });
  return (
    <div className="panel-body class-learner" data-phase={view.question?.phase ?? view.phase ?? 'none'}>
      <header className="class-head">
        <p className="field-name">
          {[settings.title, here, name].filter((each) => each !== null && each !== '').join(', ')}
        </p>
        <LinkLine />
      </header>
      <NowShown view={view} />
      <LeaveNumber />
    </div>
  );
}

function NowShown({ view }: { readonly view: LearnerView }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const { question, follow, phase, paused } = view;
  const spoken = paused ? 'paused' : follow !== null ? 'follow' : (question?.phase ?? phase ?? 'none');
  const before = useRef(spoken);
  useEffect(() => {
    if (before.current !== spoken) commands.announce(`class.said.${spoken}`);
    before.current = spoken;
  }, [spoken, commands]);
  if (follow !== null) return <FollowView follow={follow} />;
  if (phase === null) return <p className="class-now">{t('class.nothing-yet')}</p>;
  if (phase === 'ended')
    return (
      <>
        <p className="class-now">{t('class.ended')}</p>
        {question?.phase === 'revealed' && <Asked view={view} />}
      </>
    );
  if (phase === 'lobby') return <p className="class-now">{t('class.lobby')}</p>;
  return (
    <>
      {paused && <p className="class-now">{t('class.paused')}</p>}
      <Asked view={view} />
    </>
  );
}

function Asked({ view }: { readonly view: LearnerView }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const given = useApp((s) => s.class.given);
  const { question, paused, session } = view;
  const top = useRef<HTMLParagraphElement>(null);
  const shown = question === null ? '' : `${question.number} ${question.phase === 'revealed'}`;
  // Another question, or its answer, begins at its top wherever the last one was left.
  useEffect(() => {
    top.current?.closest('.place-body')?.scrollTo?.({ top: 0 });
  }, [shown]);
  if (question === null) return null;
  const { item, phase, number, count, shares } = question;
  const head = (
    <p ref={top} className="field-name">
      {t('quiz.question-of', { at: number + 1, count })}
    </p>
  );
  if (item === null)
    return (
      <>
        {head}
        <p className="class-now">{t(phase === 'skipped' ? 'class.skipped' : 'class.waiting')}</p>
      </>
    );
  if (phase === 'revealed' && shares !== null)
    return (
      <>
        {head}
        <Revealed item={item} shares={shares} own={given} />
      </>
    );
  if (phase === 'open' && !paused)
    return (
      <>
        {head}
        <AskItem
          key={`${session}-${number}`}
          item={item}
          given={given}
          tells={false}
          verb={given === null ? 'send' : 'send-again'}
          onGiven={({ answer, certainty }) => answer !== null && room.answer(answer, certainty)}
        />
        <OwnAnswer view={view} />
      </>
    );
  return (
    <>
      {head}
      <div className="ask-prompt">
        <Said content={item.prompt} />
      </div>
      {phase === 'closed' && <p className="class-now">{t('class.closed')}</p>}
      <OwnAnswer view={view} />
    </>
  );
}

/** What was answered, and whether the host has it. */
function OwnAnswer({ view }: { readonly view: LearnerView }) {
  const { t } = useSpeech();
  const teller = useTeller();
  const { given, keeps } = useApp((s) => s.class);
  const box = useRef<HTMLDivElement>(null);
  const reached = given?.reached;
  // On a phone the word that it is in must not stay below the edge.
  useEffect(() => {
    if (reached === true) box.current?.scrollIntoView?.({ block: 'nearest' });
  }, [reached]);
  const item = view.question?.item ?? null;
  if (item === null) return null;
  if (given === null)
    return view.question?.phase === 'closed' ? <p className="small">{t('class.no-answer')}</p> : null;
  const words = answerWords(teller, item, given.answer);
  return (
    <div ref={box} className="class-own" role="status" data-reached={given.reached}>
      <p>
        <strong>{t(given.reached ? 'class.reached' : keeps ? 'class.on-its-way' : 'class.not-kept')}</strong>
      </p>
      <p className="small">
        {t('class.your-answer', { answer: words, sure: t(`certainty.${given.certainty}`) })}
      </p>
      {view.own?.byOther === true && <p className="small">{t('class.by-other')}</p>}
    </div>
  );
}

function LeaveNumber() {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  return (
    <details className="class-leave small">
      <summary>{t('class.wrong-number')}</summary>
      <p>{t('class.leave-about')}</p>
      <button type="button" className="button" onClick={() => room.forget()}>
        {t('class.leave')}
      </button>
    </details>
  );
}
