/** What the instructor shows: a step of a lesson with its words, or the stage as it stands there. */
import { useEffect } from 'react';
import type { Follow } from '../../../core/classroom';
import { createClassCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { Rich } from '../learn/Said';

export function FollowView({ follow }: { readonly follow: Follow }) {
  const { t } = useSpeech();
  return (
    <section className="class-follow" aria-labelledby="class-follow">
      <h2 id="class-follow" className="field-name">
        {t('class.follow')}
      </h2>
      {follow.type === 'step' ? (
        <FollowStep topic={follow.topic} step={follow.step} />
      ) : (
        <p className="class-now">{t('class.follow-stage')}</p>
      )}
    </section>
  );
}

export function FollowStep({ topic, step }: { readonly topic: string; readonly step: string }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  useEffect(() => void room.loadTopic(topic), [room, topic]);
  const loaded = useApp((s) => s.lessons.topics[topic]);
  const found = loaded?.lesson.steps.find((each) => each.id === step);
  if (loaded === undefined) return <p className="faint">{t('lessons.loading')}</p>;
  if (found === undefined) return <p className="faint">{t('lessons.unknown')}</p>;
  return (
    <>
      <p className="small faint">{loaded.lesson.title}</p>
      <h3>{found.title}</h3>
      <Rich rich={found.text} />
    </>
  );
}
