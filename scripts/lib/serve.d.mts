import type { Server } from 'node:http';
export function serveFolder(
  folder: string,
  options?: { port?: number; host?: string },
): Promise<{ server: Server; url: string }>;
