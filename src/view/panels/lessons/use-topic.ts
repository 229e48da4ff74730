/** A lesson with the questions of its bank for the machine at hand; fetched when first asked for. */
import { useEffect, useMemo, useState } from 'react';
import type { Lesson, Topic } from '../../../core/lessons';
import { type Item, laidOutById } from '../../../core/quiz';
import { createLessonCommands, selectSubject, topicItems } from '../../../store';
import { useApp, usePlaceCommands } from '../../bind';

export interface OpenTopic {
  readonly lesson: Lesson;
  item(id: string): Item | null;
}

export function useTopic(topic: string): { readonly open: OpenTopic | null; readonly failed: boolean } {
  const { loadTopic } = usePlaceCommands(createLessonCommands);
  const loaded = useApp((s) => s.lessons.topics[topic]);
  const language = useApp((s) => s.settings.language);
  const subject = useApp(selectSubject);
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    let here = true;
    void loadTopic(topic).then((found) => here && found === null && setFailed(topic));
    return () => {
      here = false;
    };
  }, [loadTopic, topic, language]);
  const open = useMemo(() => (loaded === undefined ? null : openTopic(loaded, subject)), [loaded, subject]);
  return { open, failed: failed === topic && open === null };
}

function openTopic(topic: Topic, subject: Parameters<typeof topicItems>[1] | null): OpenTopic {
  const items = new Map(
    subject === null ? [] : topicItems(topic, subject).map((item) => [item.id, laidOutById(item)] as const),
  );
  return { lesson: topic.lesson, item: (id) => items.get(id) ?? null };
}
