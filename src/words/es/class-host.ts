/** What the class host says in its terminal. Spanish text, not yet reviewed by a native tradesperson. */
const classHost = {
  'class-host.help': `npm run classroom [-- opciones]

  --interface NOMBRE  red en la que se escucha: un nombre como wlan0, una dirección, localhost, o all (por defecto: all)
  --port NÚMERO       por defecto 4180
  --data CARPETA      dónde se guardan las respuestas (por defecto: class-data)
  --language CÓDIGO   idioma de lecciones y preguntas (por defecto: en)
  --delete            borra todo lo guardado en la carpeta de datos, y termina`,
  'class-host.bad-option': '{{reason}}. Vea npm run classroom -- --help.',
  'class-host.bad-port': 'El puerto debe ser un número de 0 a 65535, no {{port}}.',
  'class-host.port-taken': 'El puerto {{port}} está ocupado. Elija otro: npm run classroom -- --port 4181.',
  'class-host.no-start': 'El servidor de la clase no pudo arrancar: {{reason}}.',
  'class-host.no-interface': 'Este equipo no tiene una red llamada {{name}}. Tiene: {{known}}.',
  'class-host.in-use':
    'La carpeta {{folder}} la usa un servidor que está en marcha (proceso {{pid}}). Deténgalo primero, o elija otra carpeta con --data.',
  'class-host.deleted': 'Se borraron {{count}} archivos de la clase en {{folder}}.',
  'class-host.no-app':
    'La aplicación no está construida: no hay index.html en {{folder}}. Ejecute primero npm run build.',
  'class-host.no-course':
    'No se pudieron leer las lecciones ni los bancos (vea arriba). Las preguntas solo se generan.',
  'class-host.disk':
    'El disco no guardó una respuesta en {{folder}}: {{reason}}. El servidor se detuvo; nada de lo confirmado se perdió.',
  'class-host.join': '  Teléfonos:    {{address}}  (o el código cuadrado de arriba)',
  'class-host.code': '  Código:       {{code}}',
  'class-host.instructor':
    '  Instructor:   {{address}}\n                No comparta esta dirección: quien la tenga dirige la clase.',
  'class-host.data':
    '  Las respuestas se guardan en {{folder}}. Para borrarlas: npm run classroom -- --data {{folder}} --delete',
  'class-host.lost': '  Se dejaron fuera {{count}} líneas dañadas del diario.',
  'class-host.resumed': '  La sesión «{{title}}» sigue en la pregunta {{at}}.',
  'class-host.stop': '  Ctrl+C detiene el servidor.',
} as const satisfies Readonly<Record<string, string>>;

export default classHost;
