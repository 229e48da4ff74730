/** What the class host says in its terminal. */
const classHost = {
  'class-host.help': `npm run classroom [-- options]

  --interface NAME  network to listen on: a name such as wlan0, an address, localhost, or all (default: all)
  --port NUMBER     default 4180
  --data FOLDER     where answers are kept (default: class-data)
  --language CODE   language of lessons and questions (default: en)
  --delete          deletes everything that was kept in the data folder, and ends`,
  'class-host.bad-option': '{{reason}}. See npm run classroom -- --help.',
  'class-host.bad-port': 'The port must be a number from 0 to 65535, not {{port}}.',
  'class-host.port-taken': 'Port {{port}} is in use. Choose another one: npm run classroom -- --port 4181.',
  'class-host.no-start': 'The host could not start: {{reason}}.',
  'class-host.no-interface': 'This machine has no network called {{name}}. It has: {{known}}.',
  'class-host.in-use':
    'The folder {{folder}} is used by a host that is running (process {{pid}}). Stop that one first, or choose another folder with --data.',
  'class-host.deleted': 'Deleted {{count}} files of the class from {{folder}}.',
  'class-host.no-app': 'The app is not built: there is no index.html in {{folder}}. Run npm run build first.',
  'class-host.no-course': 'Lessons and banks could not be read (see above). Questions are generated only.',
  'class-host.disk':
    'The disk refused to keep an answer in {{folder}}: {{reason}}. The host has stopped; nothing that was confirmed is lost.',
  'class-host.join': '  Phones:      {{address}}  (or the square code above)',
  'class-host.code': '  Class code:  {{code}}',
  'class-host.instructor':
    '  Instructor:  {{address}}\n               Keep this address to yourself: whoever has it runs the class.',
  'class-host.data':
    '  Answers are kept in {{folder}}. Delete them with: npm run classroom -- --data {{folder}} --delete',
  'class-host.lost': '  {{count}} damaged lines of the journal were left out.',
  'class-host.resumed': '  The session “{{title}}” goes on at question {{at}}.',
  'class-host.stop': '  Ctrl+C stops the host.',
} as const satisfies Readonly<Record<string, string>>;

export default classHost;
