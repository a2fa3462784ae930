import { execFileSync } from 'node:child_process';
import { chownSync, readFileSync } from 'node:fs';
import { freshFolder, afterwards } from '../databases.ts';

/** A disk of a few megabytes that can be made larger; it is gone after the test. */
export interface SmallDisk {
  readonly folder: string;
  grow(megabytes: number): void;
}

/** Mounts a small disk in memory; null where this machine does not let us. */
export function smallDisk(megabytes: number, owner: string | null = null): SmallDisk | null {
  const folder = freshFolder();
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder], { stdio: 'ignore' });
  } catch {
    return null;
  }
  afterwards(() => {
    execFileSync('umount', ['-l', folder]);
  });
  if (owner !== null) chownSync(folder, ...userOf(owner));
  const grow = (to: number): void => {
    execFileSync('mount', ['-o', `remount,size=${to}m`, folder]);
  };
  return { folder, grow };
}

function userOf(name: string): [number, number] {
  const users = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'));
  const [, , uid, gid] = users.find(([user]) => user === name) ?? [];
  return [Number(uid), Number(gid)];
}
