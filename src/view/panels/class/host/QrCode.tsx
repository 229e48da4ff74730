/** An address as a QR code, dark on light in every theme so that phones can read it off a projection. */
import makeQr from 'qrcode-generator';
import { useMemo } from 'react';

const QUIET = 4;

export function QrCode({ text, name }: { readonly text: string; readonly name: string }) {
  const { path, size } = useMemo(() => {
    const qr = makeQr(0, 'M');
    qr.addData(text);
    qr.make();
    const count = qr.getModuleCount();
    let squares = '';
    for (let row = 0; row < count; row++)
      for (let column = 0; column < count; column++)
        if (qr.isDark(row, column)) squares += `M${column + QUIET} ${row + QUIET}h1v1h-1z`;
    return { path: squares, size: count + 2 * QUIET };
  }, [text]);
  return (
    <svg className="class-qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={name}>
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" shapeRendering="crispEdges" />
    </svg>
  );
}
