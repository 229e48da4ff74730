/** A course of one lesson about the small machine, with one question of each kind. */
import { outlineOf, parseGlossary, parseLesson, type Topic } from '../../src/core/lessons';
import { parseBank } from '../../src/core/quiz';
import type { CoursePort } from '../../src/store';

const file = (text: string) => ({ name: 'x.yaml', text });

const lesson = parseLesson(
  'small',
  file(`schema_version: 1
id: small
minutes: 5
steps:
  - id: find-it
    stage: { camera: { view: front } }
    task: { type: find, part: tube }
  - id: say-first
    cautions: [lock-out]
    task: { type: predict, item: q-direction }
  - id: set-it
    task: { type: set, setting: explode, at_least: 0.5 }
    check: q-one
`),
  file(`schema_version: 1
language: en
title: A small lesson
summary: About a small machine.
steps:
  find-it: { title: Find it, text: 'The [tube](part:tube) is a [word](term:word) of {{machine.name}}.', task: Find the tube., after: You found it. }
  say-first: { title: Say first, text: Think., after: Now you see. }
  set-it: { title: Set it, text: Pull it apart., task: Explode it by half., after: Apart. }
`),
);
const bank = parseBank(
  'small',
  file(`schema_version: 1
items:
  - { kind: choose-one, id: q-one, difficulty: 1, source: common practice, options: [a, b], right: a }
  - { kind: choose-several, id: q-several, difficulty: 1, source: common practice, options: [a, b, c], right: [a, c] }
  - { kind: pick-part, id: q-pick, difficulty: 1, source: common practice, accept: [tube], among: [tube, foot, end-bolts] }
  - { kind: order, id: q-order, difficulty: 1, source: common practice, cards: [a, b, c], legal: as-listed }
  - { kind: number, id: q-number, difficulty: 1, source: common practice, quantity: length-small, answer: { si: 0.012 }, tolerance: { si: 0.0005 } }
  - { kind: direction, id: q-direction, difficulty: 1, source: common practice, set: change, right: more }
  - { kind: match, id: q-match, difficulty: 1, source: common practice, left: [a, b], extra: [c] }
  - { kind: find-fault, id: q-fault, difficulty: 1, source: common practice, shown: [s], options: [a, b], right: b }
`),
  file(`schema_version: 1
language: en
items:
  q-one: { prompt: One?, explain: Since., options: { a: Ay, b: Bee }, why: { b: Bee is no answer. } }
  q-several: { prompt: Several?, explain: Since., options: { a: Ay, b: Bee, c: Cee } }
  q-pick: { prompt: Which is the tube?, explain: Since. }
  q-order: { prompt: In order?, explain: Since., options: { a: First, b: Second, c: Third } }
  q-number: { prompt: How long?, explain: Since. }
  q-direction: { prompt: Which way?, explain: Since., why: { less: Not less. } }
  q-match: { prompt: What does what?, explain: Since., options: { a: Ay, b: Bee }, right: { a: Does A, b: Does B, c: Does C } }
  q-fault: { prompt: What is wrong?, explain: Since., shown: { s: It rattles. }, options: { a: Nothing, b: A loose screw } }
`),
);
const glossary = parseGlossary(
  file(`schema_version: 1
terms: [{ id: word, parts: [tube], see: [other] }, { id: other }]
`),
  file(`schema_version: 1
language: en
terms: { word: { name: Word, also: [term], text: A word. }, other: { name: Other, text: Another. } }
`),
);
if (!lesson.ok || !bank.ok || !glossary.ok) throw new Error(JSON.stringify([lesson, bank, glossary]));

export const topic: Topic = { lesson: lesson.value.lesson, items: bank.value.items };
export const course: CoursePort = {
  loadCourse: () => Promise.resolve(outlineOf('en', [topic])),
  loadTopic: (_language, id) => (id === 'small' ? Promise.resolve(topic) : Promise.reject(new Error(id))),
  loadGlossary: () => Promise.resolve({ language: 'en', terms: glossary.value.terms }),
};
