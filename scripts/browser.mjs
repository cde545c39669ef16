// Finds a Chromium for the browser tests, or installs the system's own where that is possible without asking.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const USUAL = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

export function findBrowser() {
  return [process.env.FISHPLATE_CHROMIUM, ...USUAL].find(path => path && existsSync(path));
}

export function installBrowser() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return undefined;
  process.stdout.write('Installing Chromium with the system’s package manager …\n');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', 'chromium'],
  ]) {
    spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'], env });
  }
  return findBrowser();
}
