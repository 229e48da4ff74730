/** Why a step of the teardown can and must come when it does; names are put in for the ids. */
const why = {
  'why.free': 'Nothing holds the {{part}} any more: it comes straight out.',
  'why.covers': 'It stands in the way of the {{covers}}.',
  'why.bars-tool': 'No tool reaches the {{fasteners}} while it is there.',
  'why.clamps': 'It clamps the {{clamped}}.',
  'why.thread': 'Its thread holds the {{threaded}}.',
  'why.hose': 'The hose must be off before the {{port}} can move.',
  'why.drain': 'The oil behind the {{boundary}} must be out before it is opened.',
  'why.tight': 'It sits tight on the {{other}}.',
  'why.together': 'The {{part}} leaves together with the {{members}}: they part on the bench.',
  'why.together-thread': 'The {{part}} cannot be undone in place: the {{barred-by}} bars the way.',
  'why.bench': 'It is reached on the bench, now that the {{from}} is out.',
  'why.support': 'The {{carrier}} carries it with {{force_N}} and comes off next: hold it first.',
  'why.chock': 'Without the {{carrier}} nothing brakes the {{part}}: {{force_N}} hold it on the slope.',
  'why.sling':
    'When the {{fasteners}} are out nothing holds the {{part}}: take its {{force_N}} on the hoist first.',
  'why.strap': 'Its heavy side swings down with {{force_N}} as soon as it is free.',
  'why.fluid': 'The {{boundary}} holds {{fluid}} in: drain it before it is opened.',
} as const satisfies Readonly<Record<string, string>>;

export default why;
