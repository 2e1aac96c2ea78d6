import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, inject, test } from 'vitest';
import { endAll, runQueue } from './queueCommand.js';
import { redisProgram } from './redisProgram.js';
import { redisServer } from './redisServer.js';

const operations = join(import.meta.dirname, '../../packages/queue/operations');
const folder = mkdtempSync(join(tmpdir(), 'truesweep-units-'));
afterEach(endAll);
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const hasSystemd = spawnSync('systemd-analyze', ['--version']).status === 0;
const why = inject('noRedis');
const unit = (name: string) => readFileSync(join(operations, name), 'utf8');

describe.each(['redis-queue.service', 'truesweep-queue.service'])('%s', (name) => {
  test.skipIf(!hasSystemd)(
    'is understood by systemd, and shuts out what the service doesn’t need',
    () => {
      // The programs are those of another machine; one that surely is there stands for them.
      const text = unit(name).replace(/^ExecStart=\S+/m, 'ExecStart=/bin/sh');
      writeFileSync(join(folder, name), text);
      const verified = spawnSync(
        'systemd-analyze',
        ['verify', '--recursive-errors=no', join(folder, name)],
        {
          encoding: 'utf8',
        },
      );
      const about = (verified.stderr + verified.stdout)
        .split('\n')
        .filter((line) => line.includes(name));
      expect([verified.status, about]).toEqual([0, []]);
      const broken = text.replace('ProtectSystem=strict', 'ProtectSystem=strictly');
      const wrong = join(folder, `broken-${name}`);
      writeFileSync(wrong, broken);
      const refused = spawnSync('systemd-analyze', ['verify', '--recursive-errors=no', wrong], {
        encoding: 'utf8',
      });
      expect(refused.stderr).toContain('strictly');
    },
  );
});

test('the worker’s unit starts the command with options that it knows, and gives it as long as it wants to end', async () => {
  const text = unit('truesweep-queue.service');
  const [, line = ''] = /^ExecStart=\S+truesweep-queue (.*)$/m.exec(text) ?? [];
  const [, within] = /--stop-within (\d+)s/.exec(line) ?? [];
  const [, stop] = /^TimeoutStopSec=(\d+)$/m.exec(text) ?? [];
  expect(Number(stop)).toBeGreaterThan(Number(within));
  // At an address that is none it comes no further than that, past all its words.
  const words = line.replace(/redis:\/\/\S+/, 'nowhere').split(' ');
  const { code, err } = await runQueue(words);
  expect([code, err]).toEqual([2, expect.stringMatching(/--redis: This is no address of Redis/)]);
});

test.skipIf(why !== '')(
  'Redis takes its configuration with a password that is included, and keeps all it should',
  async () => {
    const program = redisProgram();
    if ('why' in program) throw new Error(program.why);
    cpSync(join(operations, 'redis-queue.conf'), join(folder, 'redis.conf'));
    const text = readFileSync(join(folder, 'redis.conf'), 'utf8');
    // Its folder and its manager are those of another machine.
    writeFileSync(
      join(folder, 'redis.conf'),
      text.replace(/^dir .*$/m, `dir ${folder}`).replace('supervised systemd', 'supervised no'),
    );
    writeFileSync(join(folder, 'secret'), 'requirepass unguessed-1234\n');
    const redis = await redisServer({
      before: [join(folder, 'redis.conf')],
      more: ['--include', join(folder, 'secret')],
    });
    const at = ['status', '--json', '--redis', redis.address];
    expect((await runQueue(at)).code).toBe(1);
    const { code, out } = await runQueue(at, {
      env: { TRUESWEEP_REDIS_PASSWORD: 'unguessed-1234' },
    });
    expect([code, JSON.parse(out).isAppendOnly]).toEqual([0, true]);
    await redis.remove();
  },
);
