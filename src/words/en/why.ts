/** Why a step of the teardown can and must come when it does; names are put in for the ids. */
const why = {
  'why.free': 'Nothing holds {{part}} any more: it comes straight out.',
  'why.covers': 'It stands in the way of {{covers}}.',
  'why.bars-tool': 'No tool reaches {{fasteners}} while it is there.',
  'why.clamps': 'It clamps {{clamped}}.',
  'why.thread': 'Its thread holds {{threaded}}.',
  'why.hose': 'The hose must be off before {{port}} can move.',
  'why.drain': 'The oil behind {{boundary}} must be out before it is opened.',
  'why.carries': 'It carries its weight on {{carrier}}, which comes later.',
  'why.tight': 'It sits tight on {{other}}.',
  'why.together': '{{part}} leaves together with {{members}}: they part on the bench.',
  'why.together-thread': '{{part}} cannot be undone in place: {{barred-by}} bars the way.',
  'why.bench': 'It is reached on the bench, now that {{from}} is out.',
  'why.last': '{{part}} is what all the rest came off.',
  'why.support': '{{carrier}} carries it with {{force_N}} and comes off next: hold it first.',
  'why.chock': 'Without {{carrier}} nothing brakes {{part}}: {{force_N}} hold it on the slope.',
  'why.sling': 'When {{fasteners}} are out nothing holds {{part}}: take its {{force_N}} on the hoist first.',
  'why.strap': 'Its heavy side swings down with {{force_N}} as soon as it is free.',
  'why.fluid': '{{boundary}} holds {{fluid}} in: drain it before it is opened.',
} as const satisfies Readonly<Record<string, string>>;

export default why;
