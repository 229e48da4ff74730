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
