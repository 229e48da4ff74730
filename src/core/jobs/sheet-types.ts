/** A job sheet as data: what a screen shows, what is printed and what a script reads. SI throughout; no sentences. */
import type { Support, Tool } from '../assembly';
import type { Message, Quantity, Vec3 } from '../kernel';
import type { SignalWord } from '../machine';
import type { Action, FieldUnit, Phase, Text, Work } from './schema';

/** A number of the sheet: what it is, how large, who says so and which calculation gave it. */
export interface SheetNumber {
  /** Unique on the sheet. */
  readonly id: string;
  /** Key `job.number.<name>`. */
  readonly label: Message;
  /** One value, a least and a greatest, or null where it does not exist yet (`notes` says why). */
  readonly value: number | readonly [number, number] | null;
  readonly quantity: Quantity;
  /** Key `job.source.<name>`. */
  readonly source: Message;
  /** Name in `npm run -s calc`; 'model' for what is read off the model, 'planner' for its statics. */
  readonly calculation: string;
  /** A value of the training machine that no real machine has. */
  readonly training: boolean;
  /** 'good', 'bad' or 'unknown' where the number is a verdict on something measured. */
  readonly verdict?: 'good' | 'bad' | 'unknown';
  readonly notes: readonly Message[];
}

/** The value of a field: SI number, words, a choice's id, yes or no. */
export type FieldValue = number | string | boolean;
export type FieldValues = Readonly<Record<string, FieldValue>>;

export interface SheetField {
  readonly id: string;
  readonly stepId: string;
  readonly type: 'number' | 'check' | 'choice' | 'text';
  /** A job's own words, or a message where the sheet made the field itself (torque). */
  readonly label: Text | Message;
  readonly unit: FieldUnit | null;
  readonly quantity: Quantity | null;
  readonly min: number | null;
  readonly max: number | null;
  /** Key `job.source.<name>`; null where there are no limits. */
  readonly source: Message | null;
  /** To be read in the manual of one's own machine. */
  readonly fromManual: boolean;
  readonly choices: readonly { readonly id: string; readonly label: Text; readonly good: boolean | null }[];
  readonly optional: boolean;
}

export interface SheetCaution {
  readonly signal: SignalWord;
  /** The catalogue's caution (`caution.<id>`), or null for the job's own words. */
  readonly id: string | null;
  readonly text: Text | null;
}

/** One lift: what hangs on the hook, or is carried by hand. */
export interface SheetLift {
  readonly unitIds: readonly string[];
  readonly mass_kg: number;
  /** Centre of mass at its place in the machine. */
  readonly centre_m: Vec3;
  /** One person may carry it. */
  readonly byHand: boolean;
  /** ISO 11228-1 reference mass and NIOSH load constant. */
  readonly limits_kg: readonly [number, number];
  /** Tension of each of two legs by angle from the horizontal; empty for what is carried by hand. */
  readonly legs: readonly {
    readonly angle_deg: number;
    readonly tension_N: number;
    readonly factor: number;
  }[];
  readonly notes: readonly Message[];
}

/** How a ring of bolts is tightened. */
export interface SheetBolts {
  readonly groupId: string;
  readonly count: number;
  readonly designation: string;
  readonly propertyClass: string | null;
  readonly tool_m: number;
  readonly drive: string;
  /** Field that asks for the manual's torque. */
  readonly torqueField: string;
  /** What was entered there; it wins over everything. */
  readonly ownTorque_Nm: number | null;
  /** T = K F d at K = 0.2 and its scatter of preload; a training illustration, null where no class is named. */
  readonly illustration: readonly SheetNumber[];
  /** Order round the ring (numbers from 1); of each part's own bolts where they sit round several alike. */
  readonly order: readonly number[];
  readonly perPart: number | null;
  /** Shares of the torque, one pass each, then once round at the last. */
  readonly stages: readonly number[];
}

export interface SheetBalloon {
  /** Item number of the kind. */
  readonly item: number;
  readonly kindId: string;
  readonly partIds: readonly string[];
}

export interface SheetStep {
  /** The job step's id, or `apart/<unit>` and `together/<unit>` for the planner's. */
  readonly id: string;
  /** From 1 through the whole sheet. */
  readonly number: number;
  readonly phase: Phase;
  readonly from: 'planner' | 'job';
  /** Step of the teardown that it is (or undoes); null for the job's own. */
  readonly planStep: number | null;
  readonly action: Action | 'remove' | 'bench' | 'support' | 'unsupport';
  /** The job's words; null for a planner's step. */
  readonly text: Text | null;
  readonly whyText: Text | null;
  /** What to do, for a planner's step: key `job.step.<name>`. */
  readonly what: Message | null;
  readonly why: readonly Message[];
  /** Units that the step is about, and the very parts (one of a weldment, say) that its picture shows. */
  readonly unitIds: readonly string[];
  readonly partIds: readonly string[];
  readonly balloons: readonly SheetBalloon[];
  readonly cautions: readonly SheetCaution[];
  readonly supports: readonly Support[];
  readonly lift: SheetLift | null;
  readonly tools: readonly Tool[];
  readonly bolts: readonly SheetBolts[];
  readonly numbers: readonly SheetNumber[];
  readonly fields: readonly SheetField[];
  readonly hold: boolean;
  readonly time_s: number;
  readonly people: number;
}

export interface SheetItem extends SheetBalloon {
  readonly count: number;
  readonly unitIds: readonly string[];
}

/** A thing to have on the bench before starting. */
export interface SheetOrder {
  readonly kindId: string | null;
  readonly item: number | null;
  readonly text: Text;
  readonly count: number | null;
  readonly volume_m3: number | null;
  readonly mass_kg: number | null;
  /** Boundary dimensions: key `job.dimension.<name>`, metres. */
  readonly dimensions: readonly { readonly label: Message; readonly value_m: number }[];
}

export interface SheetToolLine extends Tool {
  readonly stepNumbers: readonly number[];
}

export interface JobSheet {
  readonly machineId: string;
  readonly jobId: string;
  readonly title: Text;
  readonly summary: Text;
  readonly work: Work;
  readonly prerequisites: readonly Text[];
  readonly cautions: readonly SheetCaution[];
  readonly steps: readonly SheetStep[];
  /** Every field in the order of the steps. */
  readonly fields: readonly SheetField[];
  readonly items: readonly SheetItem[];
  readonly order: readonly SheetOrder[];
  readonly tools: readonly SheetToolLine[];
  readonly ownTools: readonly Text[];
  readonly lifts: readonly (SheetLift & { readonly stepNumber: number })[];
  readonly people: number;
  readonly time_s: number;
  /** Every source once: key `job.source.<name>`, and where it is used. */
  readonly sources: readonly { readonly source: Message; readonly calculations: readonly string[] }[];
  readonly notes: readonly Text[];
  /** Whether a plan exists and nothing shorter does; null where nothing is taken apart. */
  readonly plan: { readonly orderExists: boolean; readonly provenLeast: boolean } | null;
}
