/** Thread, class, grip and wrench of a fastener group. */
import type { GroupEntry } from '../../../core/machine';
import { useSpeech } from '../../bind';
import { toolText } from '../teardown/step-words';

export function FastenerFacts({ group }: { readonly group: GroupEntry }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { thread, tool } = group;
  return (
    <section>
      <h3>{t('part-card.fastener')}</h3>
      <dl className="facts">
        <dt>{t('part-card.thread')}</dt>
        <dd className="mono">
          {thread.designation}
          {thread.class !== null && (
            <span className="row-note">{t('part-card.class', { class: thread.class })}</span>
          )}
        </dd>
        <dt>{t('part-card.engaged')}</dt>
        <dd className="mono">{quantity(group.engaged_m, 'length-small')}</dd>
        <dt>{t('part-card.grip')}</dt>
        <dd className="mono">{quantity(group.grip_m, 'length-small')}</dd>
        {tool.drive !== 'none' && (
          <>
            <dt>{t('part-card.wrench')}</dt>
            <dd>
              {toolText(speech, {
                kind:
                  tool.drive === 'socket-hex' ? 'hex-key' : tool.drive === 'pin' ? 'pin-spanner' : 'socket',
                size_m: tool.size_m,
                drive: tool.drive,
                extension_m: 0,
              })}
            </dd>
          </>
        )}
        <dt>{t('part-card.torque')}</dt>
        <dd className="small">{t('part-card.torque-none')}</dd>
      </dl>
    </section>
  );
}
