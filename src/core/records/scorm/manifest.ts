/**
 * The manifest of a package: one organisation with one lesson that reports. Sources: ADL, SCORM 1.2 Content Aggregation
 * Model (2001), section 2.3; ADL, SCORM 2004 4th Edition Content Aggregation Model (2009), chapters 3 and 5 (from memory).
 */
import { element, escaped } from '../qti/xml';
import { decimal, identifier } from './formats';

export interface ManifestFacts {
  readonly lesson: string;
  readonly title: string;
  readonly language: string;
  /** Share that passes, 0 to 1. */
  readonly mastery: number;
  readonly launch: string;
  /** Paths of all files of the package but the manifest. */
  readonly files: readonly string[];
}

const XSI = 'http://www.w3.org/2001/XMLSchema-instance';
const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
/** Identifiers of XML begin with a letter. */
const named = (kind: string, { lesson }: ManifestFacts): string => identifier(`${kind}-${lesson}`);
const titled = (facts: ManifestFacts): string => element('title', {}, [escaped(facts.title)]);
const fileList = ({ files }: ManifestFacts): string[] => files.map((href) => element('file', { href }));

export function manifest12(facts: ManifestFacts): string {
  const cp = 'http://www.imsproject.org/xsd/imscp_rootv1p1p2';
  const adl = 'http://www.adlnet.org/xsd/adlcp_rootv1p2';
  const item = element(
    'item',
    { identifier: named('lesson', facts), identifierref: named('files', facts), isvisible: true },
    [titled(facts), element('adlcp:masteryscore', {}, [decimal(facts.mastery * 100)])],
  );
  const inner = [
    element('metadata', {}, [element('schema', {}, ['ADL SCORM']), element('schemaversion', {}, ['1.2'])]),
    element('organizations', { default: named('course', facts) }, [
      element('organization', { identifier: named('course', facts) }, [titled(facts), item]),
    ]),
    element('resources', {}, [
      element(
        'resource',
        {
          identifier: named('files', facts),
          type: 'webcontent',
          'adlcp:scormtype': 'sco',
          href: facts.launch,
        },
        fileList(facts),
      ),
    ]),
  ];
  const attributes = {
    identifier: named('drumbench', facts),
    version: '1.0',
    xmlns: cp,
    'xmlns:adlcp': adl,
    'xmlns:xsi': XSI,
    'xsi:schemaLocation': `${cp} imscp_rootv1p1p2.xsd ${adl} adlcp_rootv1p2.xsd`,
  };
  return `${HEAD}${element('manifest', attributes, inner)}\n`;
}

export function manifest2004(facts: ManifestFacts): string {
  const cp = 'http://www.imsglobal.org/xsd/imscp_v1p1';
  const adl = 'http://www.adlnet.org/xsd/adlcp_v1p3';
  const seq = 'http://www.adlnet.org/xsd/adlseq_v1p3';
  const nav = 'http://www.adlnet.org/xsd/adlnav_v1p3';
  const ss = 'http://www.imsglobal.org/xsd/imsss';
  // The score that the lesson reports decides, against the share that passes.
  const mastery = element('imsss:objectives', {}, [
    element('imsss:primaryObjective', { objectiveID: named('mastery', facts), satisfiedByMeasure: true }, [
      element('imsss:minNormalizedMeasure', {}, [decimal(facts.mastery)]),
    ]),
  ]);
  const item = element(
    'item',
    { identifier: named('lesson', facts), identifierref: named('files', facts), isvisible: true },
    [
      titled(facts),
      element('imsss:sequencing', {}, [
        mastery,
        element('imsss:deliveryControls', { completionSetByContent: true, objectiveSetByContent: true }),
      ]),
    ],
  );
  const organization = element(
    'organization',
    { identifier: named('course', facts), 'adlseq:objectivesGlobalToSystem': false },
    [
      titled(facts),
      item,
      element('imsss:sequencing', {}, [element('imsss:controlMode', { choice: true, flow: true })]),
    ],
  );
  const inner = [
    element('metadata', {}, [
      element('schema', {}, ['ADL SCORM']),
      element('schemaversion', {}, ['2004 4th Edition']),
    ]),
    element('organizations', { default: named('course', facts) }, [organization]),
    element('resources', {}, [
      element(
        'resource',
        {
          identifier: named('files', facts),
          type: 'webcontent',
          'adlcp:scormType': 'sco',
          href: facts.launch,
        },
        fileList(facts),
      ),
    ]),
  ];
  const places = [
    [cp, 'imscp_v1p1.xsd'],
    [adl, 'adlcp_v1p3.xsd'],
    [seq, 'adlseq_v1p3.xsd'],
    [nav, 'adlnav_v1p3.xsd'],
    [ss, 'imsss_v1p0.xsd'],
  ];
  const attributes = {
    identifier: named('drumbench', facts),
    version: '1.0',
    xmlns: cp,
    'xmlns:adlcp': adl,
    'xmlns:adlseq': seq,
    'xmlns:adlnav': nav,
    'xmlns:imsss': ss,
    'xmlns:xsi': XSI,
    'xsi:schemaLocation': places.flat().join(' '),
  };
  return `${HEAD}${element('manifest', attributes, inner)}\n`;
}

/** Names of our own: nothing is fetched there. */
const OWN = 'https://drumbench.invalid/course/';

/**
 * The course structure of cmi5: one assignable unit. Source: AICC and ADL, cmi5 specification, Quartz 1st Edition (2016),
 * section 13.
 */
export function courseCmi5(facts: ManifestFacts & { readonly summary: string }): string {
  const said = (name: string, text: string): string =>
    element(name, {}, [element('langstring', { lang: facts.language }, [escaped(text)])]);
  const id = `${OWN}${encodeURIComponent(facts.lesson)}`;
  const texts = [said('title', facts.title), said('description', facts.summary)];
  return `${HEAD}${element(
    'courseStructure',
    { xmlns: 'https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd' },
    [
      element('course', { id }, texts),
      element(
        'au',
        {
          id: `${id}/lesson`,
          launchMethod: 'AnyWindow',
          moveOn: 'CompletedAndPassed',
          masteryScore: decimal(facts.mastery),
        },
        [...texts, element('url', {}, [facts.launch])],
      ),
    ],
  )}\n`;
}
