/**
 * Whether everything that lessons, banks and glossary name is there: parts of the machine, values, terms, steps,
 * items, cautions, places of the app. Every fault at once, each at its line.
 */
import { type Fault, type Message, message, printFound } from '../kernel';
import { findUnit } from '../machine';
import {
  type Bank,
  type BankItem,
  type Content,
  lacksOf,
  type LinkTarget,
  partsNamed,
  refsOf,
  type StageSetting,
  type Subject,
  valuesOf,
} from '../quiz';
import type { SourcedGlossary, SourcedLesson } from './parse';

export interface CourseFiles {
  readonly lessons: readonly SourcedLesson[];
  readonly banks: readonly Bank[];
  readonly glossary: SourcedGlossary | null;
}

/** What the course may name besides its own ids. */
export interface Known {
  readonly subject: Subject;
  /** Keys of cautions that have words. */
  readonly cautions: ReadonlySet<string>;
  /** Places of the app (first piece of an address). */
  readonly places: ReadonlySet<string>;
  /** Ids of the machine's fault list. */
  readonly faults: ReadonlySet<string>;
}

type Place = Pick<Fault, 'file' | 'line' | 'path'>;
type Where = (...rest: PropertyKey[]) => Place;

/** Values that depend on what a person has set; the same names as the studies of the machine as it is. */
const NOW = 'now.';
const OWN = 'study.';

export function checkCourse(files: CourseFiles, known: Known): readonly Fault[] {
  return new Check(files, known).run();
}

class Check {
  private readonly faults: Fault[] = [];
  private readonly items = new Set<string>();
  private readonly steps = new Set<string>();
  private readonly terms: ReadonlySet<string>;

  constructor(
    private readonly files: CourseFiles,
    private readonly known: Known,
  ) {
    this.terms = new Set(files.glossary?.terms.map((term) => term.id));
  }

  run(): readonly Fault[] {
    const { lessons, banks, glossary } = this.files;
    const topics = new Set(lessons.map(({ lesson }) => lesson.id));
    for (const { lesson } of lessons)
      for (const step of lesson.steps) this.steps.add(`${lesson.id}/${step.id}`);
    for (const bank of banks)
      for (const { entry } of bank.items) {
        if (this.items.has(entry.id))
          this.add(bank.where(entry.id, 'id'), message('quiz.expected.own-id'), entry.id);
        this.items.add(entry.id);
      }
    for (const lesson of lessons) this.lesson(lesson, topics);
    for (const bank of banks) for (const item of bank.items) this.item(bank, item);
    if (glossary !== null) this.glossary(glossary);
    return this.faults;
  }

  private add(place: Place, expected: Message, found: unknown): void {
    this.faults.push({ ...place, expected, found: printFound(found) });
  }

  private lesson({ lesson, where, whereText }: SourcedLesson, topics: ReadonlySet<string>): void {
    lesson.requires.forEach((id, i) => {
      if (!topics.has(id) || id === lesson.id)
        this.add(where('after', i), message('lesson.expected.lesson'), id);
    });
    lesson.steps.forEach((step, i) => {
      const at: Where = (...rest) => where('steps', i, ...rest);
      const text: Where = (...rest) => whereText('steps', step.id, ...rest);
      this.stage(step.stage, (...rest) => at('stage', ...rest));
      step.cautions.forEach((id, k) => this.caution(id, at('cautions', k)));
      this.rich({ rich: step.text }, text('text'));
      if (step.taskText !== null) this.rich({ rich: step.taskText }, text('task'));
      if (step.after !== null) this.rich({ rich: step.after }, text('after'));
      if (step.check !== null) this.itemId(step.check, at('check'));
      const { task } = step;
      if (task?.type === 'find') this.part(task.part, at('task', 'part'));
      if (task?.type === 'predict') this.itemId(task.item, at('task', 'item'));
      if (task?.type === 'measure') this.value(task.value, at('task', 'value'), true);
      if (task?.type === 'take-off') this.takenOff(task.unit, at('task', 'unit'));
    });
  }

  private item(bank: Bank, said: BankItem): void {
    const { entry } = said;
    const where: Where = (...rest) => bank.where(entry.id, ...rest);
    for (const lack of lacksOf(said, this.known.subject))
      this.add(where(...lack.path), lack.expected, lack.found);
    if (entry.stage !== undefined) this.stage(entry.stage, (...rest) => where('stage', ...rest));
    if (entry.about?.step !== undefined && !this.steps.has(entry.about.step))
      this.add(where('about', 'step'), message('lesson.expected.step'), entry.about.step);
    entry.about?.terms?.forEach((id, i) => this.term(id, where('about', 'terms', i)));
    if (entry.about?.place !== undefined) this.place(entry.about.place.split('/'), where('about', 'place'));
    if ('options' in entry)
      entry.options.forEach((option, i) => {
        if (typeof option === 'object' && 'fault' in option && !this.known.faults.has(option.fault))
          this.add(where('options', i), message('quiz.expected.fault'), option.fault);
      });
    this.rich(said.prompt, bank.whereText(entry.id, 'prompt'));
    this.rich(said.explain, bank.whereText(entry.id, 'explain'));
    for (const section of ['options', 'why', 'right', 'shown'] as const)
      for (const [id, text] of Object.entries(said[section]))
        this.rich(text, bank.whereText(entry.id, section, id));
  }

  private glossary({ terms, where, whereText }: SourcedGlossary): void {
    terms.forEach((term, i) => {
      term.parts.forEach((ref, k) => this.part(ref, where('terms', i, 'parts', k)));
      term.see.forEach((id, k) => this.term(id, where('terms', i, 'see', k)));
      this.rich({ rich: term.text }, whereText('terms', term.id, 'text'));
    });
  }

  private stage(stage: StageSetting, where: Where): void {
    const { subject } = this.known;
    if (stage.camera?.part !== undefined) this.part(stage.camera.part, where('camera', 'part'));
    for (const key of ['highlight', 'only', 'ghost', 'hide'] as const)
      stage[key]?.forEach((ref, i) => this.part(ref, where(key, i)));
    if (stage.taken_off !== undefined) this.takenOff(stage.taken_off, where('taken_off'));
    for (const id of Object.keys(stage.options ?? {}))
      if (!(id in subject.machine.options)) this.add(where('options', id), message('fault.known-option'), id);
  }

  private takenOff(unit: string, place: Place): void {
    const { machine, teardown } = this.known.subject;
    const leaves = teardown.steps.some((step) => step.kind !== 'support' && step.unitIds.includes(unit));
    if (findUnit(machine, unit) === undefined || !leaves)
      this.add(place, message('lesson.expected.unit-taken-off'), unit);
  }

  private rich(content: Content, place: Place): void {
    if (!('rich' in content)) return;
    const { values, links } = refsOf(content.rich);
    for (const name of values) this.value(name, place, false);
    for (const link of links) this.link(link, place);
  }

  private link(link: LinkTarget, place: Place): void {
    switch (link.to) {
      case 'part':
        this.part(link.ref, place);
        break;
      case 'term':
        this.term(link.id, place);
        break;
      case 'step':
        if (!this.steps.has(`${link.topic}/${link.step}`))
          this.add(place, message('lesson.expected.step'), `${link.topic}/${link.step}`);
        break;
      case 'place':
        this.place(link.path, place);
        break;
    }
  }

  private part(ref: string, place: Place): void {
    if (partsNamed(this.known.subject.machine, ref).length === 0)
      this.add(place, message('quiz.expected.part'), ref);
  }

  private value(name: string, place: Place, number: boolean): void {
    const own = name.startsWith(NOW) ? OWN + name.slice(NOW.length) : name;
    const found = valuesOf(this.known.subject).get(own);
    if (found === undefined || (number && !('si' in found)))
      this.add(place, message('quiz.expected.value'), name);
  }

  private term(id: string, place: Place): void {
    if (!this.terms.has(id)) this.add(place, message('lesson.expected.term'), id);
  }

  private itemId(id: string, place: Place): void {
    if (!this.items.has(id)) this.add(place, message('quiz.expected.item'), id);
  }

  private caution(id: string, place: Place): void {
    if (!this.known.cautions.has(id)) this.add(place, message('lesson.expected.caution'), id);
  }

  private place(path: readonly string[], place: Place): void {
    if (!this.known.places.has(path[0] ?? ''))
      this.add(place, message('lesson.expected.place', { places: [...this.known.places] }), path.join('/'));
  }
}
