/** The drawing sheet's frame with its zone marks (numbers along, letters up; ISO 5457). Ornament only. */
const COLUMNS = ['1', '2', '3', '4', '5', '6', '7', '8'];
const ROWS = ['A', 'B', 'C', 'D', 'E', 'F'];

export function SheetFrame() {
  return (
    <div className="sheet-frame" aria-hidden="true">
      {(['top', 'bottom'] as const).map((edge) => (
        <div key={edge} className={`zones ${edge}`}>
          {COLUMNS.map((mark) => (
            <span key={mark}>{mark}</span>
          ))}
        </div>
      ))}
      {(['left', 'right'] as const).map((edge) => (
        <div key={edge} className={`zones ${edge}`}>
          {ROWS.map((mark) => (
            <span key={mark}>{mark}</span>
          ))}
        </div>
      ))}
    </div>
  );
}
