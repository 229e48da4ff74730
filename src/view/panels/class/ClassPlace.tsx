/** The place of the class: a phone of the class, or the instructor's screen at `#/class/host`. */
import { useEffect } from 'react';
import { createClassCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { HostScreen } from './host/HostScreen';
import { LearnerScreen } from './LearnerScreen';
import { NoHost } from './NoHost';
import './class.css';

export default function ClassPlace() {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const greeting = useApp((s) => s.class.greeting);
  const atHost = useApp((s) => s.route.path[0] === 'host');
  const machine = useApp((s) => s.document);
  useEffect(() => {
    if (!atHost) void room.arrive();
  }, [room, atHost]);
  // Whatever is shown sets the stage again when the machine has come, and gives it back when the place is left.
  useEffect(() => {
    if (machine !== null) room.restage();
  }, [room, machine]);
  useEffect(() => () => room.leaveStage(), [room]);
  if (atHost) return <HostScreen />;
  if (greeting === 'unknown') return <p className="panel-body faint">{t('class.looking')}</p>;
  if (greeting === null) return <NoHost />;
  return <LearnerScreen greeting={greeting} />;
}
