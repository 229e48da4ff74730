/** Packages for a school's system, in Spanish; not yet reviewed by a native tradesperson. */
const packages = {
  'packages.title': 'Paquetes para el sistema de una escuela',
  'packages.about':
    'Una lección con su cuestionario en un archivo zip que un sistema de aprendizaje (LMS) puede importar. El aprendiz la abre allí; el sistema recibe el avance, las respuestas y la puntuación.',
  'packages.lesson': 'Lección',
  'packages.standard': 'Norma que pide el sistema',
  'packages.standard.scorm12': 'SCORM 1.2',
  'packages.standard.scorm2004': 'SCORM 2004, 4.ª edición',
  'packages.standard.cmi5': 'cmi5 (xAPI)',
  'packages.mastery': 'Respuestas correctas para aprobar, en porcentaje',
  'packages.language': 'Idioma',
  'packages.holds':
    'Contiene la escena 3-D, esta lección, sus preguntas con las respuestas y el glosario: {{files}} archivos, {{size}} MB antes de comprimir. No incluye registros suyos.',
  'packages.needs': 'Funciona sin internet, desde el servidor del sistema de aprendizaje.',
  'packages.make': 'Crear el paquete',
  'packages.making': 'Empaquetando: {{done}} de {{count}} archivos',
  'packages.made': 'Se guardó {{file}}: {{size}} MB.',
  'packages.no-list':
    'No está la lista de archivos de la aplicación, así que aquí no se puede crear un paquete. Viene con la aplicación compilada (npm start).',
  'packages.failed': 'No se pudo leer un archivo de la aplicación ({{file}}). Inténtelo de nuevo con red.',
  'packages.waiting':
    'Esperando la lección. Si este texto no desaparece, la página se abrió como archivo: entregue el paquete a un sistema de aprendizaje.',
  'records.work': 'Pruebas, práctica y trabajos',
  'records.tests': 'Pruebas entregadas',
  'records.tests-best': 'Mejor prueba, última prueba',
  'records.practice-done': 'Prácticas terminadas',
  'records.practice-open': 'Prácticas abiertas',
  'records.practice-lost': 'Menos puntos perdidos',
  'records.practice-time': 'Tiempo de práctica, en minutos',
  'records.jobs-open': 'Hojas de trabajo en curso',
  'records.jobs-done': 'Trabajos terminados',
  'records.jobs-early': 'Trabajos cerrados antes de terminar',
  'records.jobs-result': 'Trabajos aprobados, no aprobados',
  'records.work-unreadable': '{{count}} de estos registros no se pudieron leer y no se cuentan.',
  'delivery.title': 'Enviar al almacén de registros de una escuela (xAPI)',
  'delivery.about':
    'Lo que usted hace aquí se envía también al almacén de registros de aprendizaje de su escuela: respuestas, lecciones, pruebas, prácticas y trabajos. Sin red, espera aquí. El almacén guarda cada dato una sola vez. Su escuela le da estos valores.',
  'delivery.endpoint': 'Dirección del almacén de registros',
  'delivery.user': 'Nombre (clave de acceso) para el almacén',
  'delivery.secret': 'Secreto para el almacén',
  'delivery.keep-secret':
    'Guardar el secreto en este navegador. Quien use este equipo podrá entonces enviar.',
  'delivery.home': 'Dirección de su escuela o centro de formación',
  'delivery.name': 'Su nombre o número allí',
  'delivery.mastery': 'Respuestas correctas para aprobar una prueba, en porcentaje',
  'delivery.start': 'Empezar a enviar',
  'delivery.now': 'Enviar ahora',
  'delivery.stop': 'Dejar de enviar',
  'delivery.phase.idle': 'Todo está enviado.',
  'delivery.phase.sending': 'Enviando…',
  'delivery.phase.waiting': 'Próximo intento a las {{time}}.',
  'delivery.phase.stopped': 'Detenido.',
  'delivery.counts': '{{sent}} enviados, {{queued}} en espera, {{refused}} rechazados.',
  'delivery.says': 'El almacén dice: {{says}}',
  'delivery.trouble.unreachable':
    'El almacén de registros no responde. Puede faltar la red, la dirección puede ser incorrecta, o el almacén no admite consultas desde esta página (su ajuste CORS debe permitir {{origin}}).',
  'delivery.trouble.not-let-in':
    'El almacén de registros no reconoce este nombre y secreto. Compruébelos con su escuela.',
  'delivery.trouble.no-store':
    'En esta dirección no hay un almacén de registros. A menudo termina en /xapi o /data/xAPI.',
  'delivery.trouble.busy': 'El almacén de registros está ocupado o tiene una falla.',
  'delivery.trouble.no-secret': 'Escriba el secreto otra vez: no se guardó en este navegador.',
  'school.home': 'Esta lección',
  'school.start': 'Empezar la lección',
  'school.go-on': 'Seguir con la lección',
  'school.again': 'Repasar la lección',
  'school.quiz-start': 'Empezar el cuestionario',
  'school.quiz-on': 'Seguir con el cuestionario',
  'school.quiz-again': 'Repetir el cuestionario',
  'school.steps': 'Pasos hechos',
  'school.of': '{{done}} de {{count}}',
  'school.quiz': 'Cuestionario',
  'school.not-yet': 'aún sin hacer',
  'school.passed': 'aprobado: {{right}} de {{count}} correctas',
  'school.not-passed': 'aún no aprobado: {{right}} de {{count}} correctas',
  'school.pass-at': 'Nota para aprobar',
  'school.about':
    'Queda completa cuando haya recorrido todos los pasos y entregado el cuestionario de {{count}} preguntas. Puede repetirlo: cuenta el mejor resultado.',
  'school.heard':
    'El sistema de su escuela recibe su avance. Cierre la página cuando quiera y siga más tarde.',
  'school.only-looking':
    'El sistema de su escuela abrió esta lección solo para mirar: no se registra puntuación ni avance.',
  'school.closed': 'Esta visita terminó. Abra la lección de nuevo desde el sistema de su escuela.',
  'school.failed':
    'No se pudo cargar la lección. Recargue la página o ábrala de nuevo desde el sistema de su escuela.',
  'school.trouble.missing':
    'No se encontró un sistema de aprendizaje. La lección funciona, pero al cerrar esta página no se guarda ni se informa nada.',
  'school.trouble.refused':
    'El sistema de su escuela no quiso empezar. La lección funciona, pero no se guarda ni se informa nada.',
  'school.trouble.lost':
    'El sistema de su escuela no aceptó el último informe. La lección funciona; se envía de nuevo en su próximo paso.',
  'school.system-says': 'El sistema dice: {{detail}}',
  'school.elsewhere': 'Esto lleva a otra parte de Drumbench que no está en este paquete.',
  'school.back': 'Volver a la lección',
} as const satisfies Readonly<Record<string, string>>;

export default packages;
