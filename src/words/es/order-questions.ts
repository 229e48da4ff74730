/** Questions of order, made from what blocks what: their asking, their reasons. Names are put in for the parts. Spanish text, not yet reviewed by a native tradesperson. */
const orderQuestions = {
  'order.now.assembled': 'La máquina está completa. ¿Qué se podría retirar ahora?',
  'order.now.stage': 'La máquina está como se ve. ¿Qué se podría retirar ahora?',
  'order.now.explain': 'Ya nada sujeta ni tapa esto: {{parts}}.',
  'order.blocks.ask': 'Todavía no se puede retirar: {{part}}. ¿Qué lo impide?',
  'order.blocks.beside': 'Está cerca: {{other}}. Pero no impide retirar «{{part}}».',
  'order.last.ask': '¿Qué es lo último que se debe retirar antes de poder mover «{{part}}»?',
  'order.last.earlier': 'También se debe retirar «{{other}}», pero antes que «{{last}}».',
  'order.last.apart': 'No hace falta retirar «{{other}}» para que salga «{{part}}».',
  'order.last.explain': 'Lo último en salir: {{last}}. Antes deben salir otras {{count}} unidades.',
  'order.support.ask': 'Lo siguiente en salir: {{part}}. ¿Qué se debe sostener primero?',
  'order.support.keeps': 'Sigue con apoyo «{{other}}» aunque se retire «{{part}}».',
  'order.sequence.ask': 'Ponga esto en un orden en que se pueda retirar.',
  'order.sequence.one': 'Solo sirve un orden: {{parts}}.',
  'order.sequence.several': 'Sirven {{count}} órdenes, este entre ellos: {{parts}}.',
  'order.why.path': 'Estorba el paso de «{{part}}»: {{by}}.',
  'order.why.tool': 'Ninguna herramienta llega a «{{part}}». Estorba: {{by}}.',
  'order.why.clamped': 'Falta soltar el apriete de «{{part}}»: {{by}}.',
  'order.why.thread': 'Sigue en su rosca «{{part}}»: {{by}}.',
  'order.why.hose': 'Todavía hay una manguera en «{{part}}»: {{by}}.',
  'order.why.drain': 'Primero debe salir el aceite detrás de «{{part}}»: {{by}}.',
  'order.why.tight': 'Sigue con apriete en su asiento «{{part}}»: {{by}}.',
} as const satisfies Readonly<Record<string, string>>;

export default orderQuestions;
