/**
 * Makes sure that the packages of package-lock.json are installed. Node built-ins only: it runs before anything is
 * there. A stamp of the lockfile's hash says whether an install finished, since a folder node_modules alone does not.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Drumbench needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

const stamp = join(root, 'node_modules', '.drumbench-lock');
const hash = createHash('sha256')
  .update(readFileSync(join(root, 'package-lock.json')))
  .digest('hex');
const installed = existsSync(stamp) && readFileSync(stamp, 'utf8') === hash;
if (!installed) {
  console.log('Installing packages (once) ...');
  const env = { ...process.env };
  for (const key of Object.keys(env)) {
    // Left over from a production shell these would leave out what the build needs.
    if (/^(NODE_ENV|npm_config_(omit|production|only|include|ignore_scripts))$/i.test(key)) delete env[key];
  }
  const npm = process.env.npm_execpath;
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const result = npm
    ? spawnSync(process.execPath, [npm, ...args], { cwd: root, env, stdio: 'inherit' })
    : spawnSync(process.platform === 'win32' ? 'npm.cmd' : 'npm', args, {
        cwd: root,
        env,
        stdio: 'inherit',
        shell: process.platform === 'win32',
      });
  if (result.status !== 0) {
    console.error('Installing the packages failed; see the lines above.');
    process.exit(result.status ?? 1);
  }
  writeFileSync(stamp, hash);
}
