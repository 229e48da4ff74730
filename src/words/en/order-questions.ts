/** Questions of order, made from what blocks what: their asking, their reasons. Names are put in for the parts. */
const orderQuestions = {
  'order.now.assembled': 'The machine is complete. Which of these could come off now?',
  'order.now.stage': 'The machine stands as shown. Which of these could come off now?',
  'order.now.explain': 'Nothing holds or covers these any more: {{parts}}.',
  'order.blocks.ask': 'The {{part}} cannot come off yet. What stops it?',
  'order.blocks.beside': 'The {{other}} is near, but the {{part}} comes off with it still in place.',
  'order.last.ask': 'What is the last thing that must be off before the {{part}} can move?',
  'order.last.earlier': 'The {{other}} must be off too, but before the {{last}}.',
  'order.last.apart': 'The {{other}} does not have to come off for the {{part}}.',
  'order.last.explain': 'The {{last}} comes off last: {{count}} other units must be off before it can.',
  'order.support.ask': 'The {{part}} comes off next. What must be held first?',
  'order.support.keeps': 'The {{other}} stays carried when the {{part}} is off.',
  'order.sequence.ask': 'Put these in an order in which they can come off.',
  'order.sequence.one': 'Only one order works: {{parts}}.',
  'order.sequence.several': '{{count}} orders of these work, this one among them: {{parts}}.',
  'order.why.path': 'In the way of the {{part}}: {{by}}.',
  'order.why.tool': 'No tool reaches the {{part}}. In its way: {{by}}.',
  'order.why.clamped': 'The {{part}} is still clamped: {{by}}.',
  'order.why.thread': 'The {{part}} still sits on its thread: {{by}}.',
  'order.why.hose': 'A hose is still on the {{part}}: {{by}}.',
  'order.why.drain': 'The oil behind the {{part}} must be out first: {{by}}.',
  'order.why.tight': 'The {{part}} still sits tight: {{by}}.',
} as const satisfies Readonly<Record<string, string>>;

export default orderQuestions;
