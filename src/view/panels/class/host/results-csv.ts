/** Results as tables for a spreadsheet; column names as in the code, so that a script can read them in any language. */
import type { ClassReportMessage } from '../../../../store';
import { csvText } from '../../common/csv';
import type { Teller } from '../../learn/teller';

/** A spreadsheet would run a cell that begins like a formula; a name must not be able to be one. */
export const harmless = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

export const itemsCsv = ({ report }: ClassReportMessage, teller: Teller): string =>
  csvText(
    [
      'question',
      'id',
      'kind',
      'from',
      'prompt',
      'answers',
      'right',
      'difficulty',
      'point_biserial',
      'upper_lower_27',
      'sure_and_wrong',
    ],
    report.items.map((each) => [
      each.at + 1,
      each.question.original,
      each.question.item.kind,
      each.question.from,
      harmless(teller.text(each.question.item.prompt)),
      each.shares.count,
      each.shares.right,
      each.difficulty,
      each.point_biserial,
      each.discrimination,
      each.sureAndWrong.length,
    ]),
  );

/** One row a number, one column a question: 1 right, 0 wrong, empty not answered; certainty beside it. */
export const seatsCsv = ({ report, given }: ClassReportMessage): string =>
  csvText(
    [
      'number',
      'name',
      'answered',
      'right',
      'mark',
      ...report.items.flatMap(({ at }) => [`q${at + 1}_right`, `q${at + 1}_certainty`]),
    ],
    report.seats.map((each) => [
      each.seat,
      harmless(each.name ?? ''),
      each.answered,
      each.right,
      each.mark,
      ...report.items.flatMap(({ at }) => {
        const one = given[at]?.[each.seat];
        return one === undefined ? [null, null] : [one.right ? 1 : 0, one.certainty];
      }),
    ]),
  );
