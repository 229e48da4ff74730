/** Answer by picking a part: on the stage, or from a list that is equal to it. */
import { useEffect, useRef } from 'react';
import { partsNamed } from '../../../core/quiz';
import { useApp, useSpeech } from '../../bind';
import { type FieldProps, OptionList } from './ChoiceFields';
import { useTeller } from './teller';

export function PickField({ item, answer, onAnswer, marked }: FieldProps<'pick-part'>) {
  const { t } = useSpeech();
  const teller = useTeller();
  const picked = useApp((s) => s.selectedPart);
  const before = useRef(picked);
  const told = marked !== null;
  // What was selected before the question came is no answer; a new pick is.
  useEffect(() => {
    if (picked === before.current) return;
    before.current = picked;
    if (!told && picked !== null) onAnswer({ type: 'part', partId: picked });
  }, [picked, told, onAnswer]);
  const { machine } = teller;
  if (machine === null) return <p className="faint">{t('ask.no-machine')}</p>;
  const partId = answer?.type === 'part' ? answer.partId : null;
  const holds = (ref: string, id: string | null): boolean =>
    id !== null && partsNamed(machine, ref).includes(id);
  const listed = item.among.find((ref) => holds(ref, partId));
  return (
    <>
      <p className="small">{t('ask.pick')}</p>
      {partId !== null && listed === undefined && (
        <p className="pick-now" data-told={told ? (marked.right ? 'right' : 'not') : undefined}>
          {t('ask.picked', { part: teller.name(partId) })}
        </p>
      )}
      <OptionList
        options={item.among.map((ref) => ({ id: ref, says: { part: ref } }))}
        chosen={listed === undefined ? [] : [listed]}
        right={item.among.filter((ref) => item.accept.some((id) => holds(ref, id)))}
        several={false}
        told={told}
        legend={t('ask.choose-part')}
        onChoose={([ref]) => {
          const first = ref === undefined ? undefined : partsNamed(machine, ref)[0];
          if (first !== undefined) onAnswer({ type: 'part', partId: first });
        }}
      />
    </>
  );
}
