/** Packages for a school's system: making one, and what a packaged lesson says. */
const packages = {
  'packages.title': 'Packages for a school’s system',
  'packages.about':
    'One lesson with its quiz as a zip file that a learning system (LMS) takes in. The learner opens it there; the system is told how far they are, what they answered and their score.',
  'packages.lesson': 'Lesson',
  'packages.standard': 'Standard that the system asks for',
  'packages.standard.scorm12': 'SCORM 1.2',
  'packages.standard.scorm2004': 'SCORM 2004, 4th edition',
  'packages.standard.cmi5': 'cmi5 (xAPI)',
  'packages.mastery': 'Right answers that pass, in percent',
  'packages.language': 'Language',
  'packages.holds':
    'It holds the 3-D stage, this lesson, its questions with their answers, and the glossary: {{files}} files, {{size}} MB before packing. No records of yours go in.',
  'packages.needs': 'It runs without the internet, from the learning system’s own server.',
  'packages.make': 'Make the package',
  'packages.making': 'Packing: {{done}} of {{count}} files',
  'packages.made': '{{file}} is saved: {{size}} MB.',
  'packages.no-list':
    'The list of the app’s files is not there, so no package can be made here. It comes with the built app (npm start).',
  'packages.failed': 'A file of the app could not be read ({{file}}). Try again with a network.',
  'packages.waiting':
    'Waiting for the lesson. If this stays, the page was opened as a file: give the package to a learning system instead.',
  'records.work': 'Tests, practice and jobs',
  'records.tests': 'Tests handed in',
  'records.tests-best': 'Best, last test',
  'records.practice-done': 'Practice runs finished',
  'records.practice-open': 'Practice runs open',
  'records.practice-lost': 'Fewest points lost',
  'records.practice-time': 'Time in practice, in minutes',
  'records.jobs-open': 'Job sheets under way',
  'records.jobs-done': 'Jobs finished',
  'records.jobs-early': 'Jobs ended early',
  'records.jobs-result': 'Jobs passed, failed',
  'records.work-unreadable': '{{count}} of these records could not be read and are not counted.',
  'delivery.title': 'Send to a school’s record store (xAPI)',
  'delivery.about':
    'What you do here is also sent to your school’s learning record store: answers, lessons, tests, practice runs and jobs. Without a network it waits here. The store keeps each once. Your school gives you these values.',
  'delivery.endpoint': 'Address of the record store',
  'delivery.user': 'Name (key) for the store',
  'delivery.secret': 'Secret for the store',
  'delivery.keep-secret': 'Keep the secret in this browser. Whoever uses this device can then send.',
  'delivery.home': 'Address of your school or training centre',
  'delivery.name': 'Your name or number there',
  'delivery.mastery': 'Right answers that pass a test, in percent',
  'delivery.start': 'Start sending',
  'delivery.now': 'Send now',
  'delivery.stop': 'Stop sending',
  'delivery.phase.idle': 'Everything is sent.',
  'delivery.phase.sending': 'Sending …',
  'delivery.phase.waiting': 'Waiting for the next try at {{time}}.',
  'delivery.phase.stopped': 'Stopped.',
  'delivery.counts': '{{sent}} sent, {{queued}} waiting, {{refused}} refused.',
  'delivery.says': 'The store says: {{says}}',
  'delivery.trouble.unreachable':
    'No answer from the record store. There may be no network, the address may be wrong, or the store does not let this page ask (its CORS setting must allow {{origin}}).',
  'delivery.trouble.not-let-in':
    'The record store does not know this name and secret. Check them with your school.',
  'delivery.trouble.no-store':
    'There is no record store at this address. It often ends in /xapi or /data/xAPI.',
  'delivery.trouble.busy': 'The record store is busy or has a fault.',
  'delivery.trouble.no-secret': 'Type the secret again: it was not kept in this browser.',
  'school.home': 'This lesson',
  'school.start': 'Start the lesson',
  'school.go-on': 'Go on with the lesson',
  'school.again': 'Go through the lesson again',
  'school.quiz-start': 'Start the quiz',
  'school.quiz-on': 'Go on with the quiz',
  'school.quiz-again': 'Take the quiz again',
  'school.steps': 'Steps done',
  'school.of': '{{done}} of {{count}}',
  'school.quiz': 'Quiz',
  'school.not-yet': 'not taken yet',
  'school.passed': 'passed: {{right}} of {{count}} right',
  'school.not-passed': 'not passed yet: {{right}} of {{count}} right',
  'school.pass-at': 'Pass mark',
  'school.about':
    'Complete when you have gone through all steps and handed in the quiz of {{count}} questions. You may take it again: the best result counts.',
  'school.heard': 'Your school’s system is told how far you are. Close the page any time and go on later.',
  'school.only-looking':
    'Your school’s system opened this lesson for looking only: no score and no completion are recorded.',
  'school.closed': 'This visit has ended. Open the lesson again from your school’s system.',
  'school.failed':
    'The lesson could not be loaded. Reload the page, or open it again from your school’s system.',
  'school.trouble.missing':
    'No learning system was found. The lesson works, but nothing is kept or reported when you close this page.',
  'school.trouble.refused':
    'Your school’s system would not begin. The lesson works, but nothing is kept or reported.',
  'school.trouble.lost':
    'Your school’s system did not take the last report. The lesson works; it is sent again at your next step.',
  'school.system-says': 'The system says: {{detail}}',
  'school.elsewhere': 'This leads to another part of Drumbench, which is not in this package.',
  'school.back': 'Back to the lesson',
} as const satisfies Readonly<Record<string, string>>;

export default packages;
