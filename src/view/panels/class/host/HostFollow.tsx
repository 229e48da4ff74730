/** Follow along: phones show the step of a lesson that is chosen here, or the stage as it stands here. */
import { useEffect, useId, useState } from 'react';
import type { HostPage } from '../../../../core/classroom';
import { createClassCommands, createLessonCommands } from '../../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../../bind';
import { FollowStep } from '../FollowView';

export function HostFollow({ page }: { readonly page: HostPage }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const lessons = usePlaceCommands(createLessonCommands);
  const id = useId();
  const course = useApp((s) => s.lessons.course);
  const topics = useApp((s) => s.lessons.topics);
  const { follow } = page.view;
  const [topic, setTopic] = useState(follow?.type === 'step' ? follow.topic : '');
  useEffect(() => void lessons.loadCourse(), [lessons]);
  useEffect(() => {
    if (topic !== '') void lessons.loadTopic(topic);
  }, [lessons, topic]);
  const steps = topics[topic]?.lesson.steps ?? [];
  const at =
    follow?.type === 'step' && follow.topic === topic ? steps.findIndex((s) => s.id === follow.step) : -1;
  const show = (number: number): void => {
    const step = steps[number];
    if (step === undefined) return;
    room.order({ type: 'follow', follow: { type: 'step', topic, step: step.id } });
    lessons.setStage(step.stage);
  };
  return (
    <>
      <h2>{t('class.tab.follow')}</h2>
      <p>{t('class.follow-about')}</p>
      <section aria-labelledby={`${id}-step`}>
        <h3 id={`${id}-step`}>{t('class.follow-lesson')}</h3>
        <div>
          <label htmlFor={`${id}-topic`} className="field-name">
            {t('class.follow-topic')}
          </label>
          <select id={`${id}-topic`} value={topic} onChange={(event) => setTopic(event.currentTarget.value)}>
            <option value="">{t('ask.match-none')}</option>
            {course?.lessons.map((lesson) => (
              <option key={lesson.id} value={lesson.id}>
                {lesson.title}
              </option>
            ))}
          </select>
        </div>
        <div className="buttons">
          <button
            type="button"
            className="button act"
            disabled={at + 1 >= steps.length}
            onClick={() => show(at + 1)}
          >
            {t(at < 0 ? 'class.follow-first' : 'class.follow-next')}
          </button>
          <button type="button" className="button" disabled={at < 1} onClick={() => show(at - 1)}>
            {t('class.follow-previous')}
          </button>
        </div>
        {follow?.type === 'step' && <FollowStep topic={follow.topic} step={follow.step} />}
      </section>
      <section aria-labelledby={`${id}-stage`}>
        <h3 id={`${id}-stage`}>{t('class.follow-view')}</h3>
        <p className="small">{t('class.follow-view-about')}</p>
        <div className="buttons">
          <button type="button" className="button" onClick={() => room.followStage()}>
            {t(follow?.type === 'stage' ? 'class.follow-view-again' : 'class.follow-view-show')}
          </button>
        </div>
      </section>
      <p role="status">
        {follow === null
          ? t('class.follow-off')
          : t(follow.type === 'step' ? 'class.follow-on-step' : 'class.follow-on-stage')}
      </p>
      {follow !== null && (
        <div className="buttons">
          <button
            type="button"
            className="button"
            onClick={() => room.order({ type: 'follow', follow: null })}
          >
            {t('class.follow-stop')}
          </button>
        </div>
      )}
    </>
  );
}
