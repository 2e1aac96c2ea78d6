import type { QueueCounts } from '../queue/openQueue.js';
import type { Metric } from './metricsText.js';

/** Upper bounds of the histogram's buckets, s. */
const bounds = [0.01, 0.03, 0.1, 0.3, 1, 3, 10, 30, 100, 300, 1000];

/** What a worker has done since it began. */
export interface WorkFigures {
  /** Notes a recording that was judged or had a result: what came of it, and how long it took, s. */
  readonly done: (outcome: string, seconds: number) => void;
  readonly parked: () => void;
  readonly retried: () => void;
  readonly crashed: () => void;
  readonly takenOver: () => void;
  readonly givenBack: () => void;
  /** The counts, for who tells them at the end. */
  readonly counts: () => { judged: number; known: number; parked: number; givenBack: number };
  /** All of it for Prometheus, with what the queue holds; without the latter where Redis is not there. */
  readonly metrics: (
    queue: QueueCounts | undefined,
    running: number,
    version: string,
  ) => readonly Metric[];
}

/** Figures of a worker, from zero. */
export function workFigures(): WorkFigures {
  const outcomes = new Map<string, number>();
  const events = { parked: 0, retried: 0, crashed: 0, takenOver: 0, givenBack: 0 };
  const buckets = bounds.map(() => 0);
  let [seconds, timed] = [0, 0];
  const add = (event: keyof typeof events) => () => {
    events[event] += 1;
  };
  const counter = (name: string, help: string, value: number): Metric => ({
    name: `truesweep_queue_${name}_total`,
    help,
    type: 'counter',
    samples: [{ value }],
  });
  return {
    done(outcome, took) {
      outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
      bounds.forEach((bound, i) => {
        if (took <= bound) buckets[i]! += 1;
      });
      seconds += took;
      timed += 1;
    },
    parked: add('parked'),
    retried: add('retried'),
    crashed: add('crashed'),
    takenOver: add('takenOver'),
    givenBack: add('givenBack'),
    counts() {
      const known = outcomes.get('known') ?? 0;
      const { parked, givenBack } = events;
      return { judged: timed - known, known, parked, givenBack };
    },
    metrics(queue, running, version) {
      const gauge = (name: string, help: string, samples: Metric['samples']): Metric => ({
        name: `truesweep_queue_${name}`,
        help,
        type: 'gauge',
        samples,
      });
      return [
        gauge('worker_info', 'The version of the worker.', [{ labels: { version }, value: 1 }]),
        gauge('redis_up', 'Whether Redis answers: 1, or 0.', [{ value: queue ? 1 : 0 }]),
        ...(queue
          ? [
              gauge(
                'messages',
                'Messages in the queue, by what they wait for.',
                Object.entries(queue).map(([state, value]) => ({ labels: { state }, value })),
              ),
            ]
          : []),
        gauge('running', 'Judgements of this worker under way.', [{ value: running }]),
        {
          name: 'truesweep_queue_recordings_total',
          help: 'Recordings that this worker finished, by what came of them.',
          type: 'counter',
          samples: [...outcomes].map(([outcome, value]) => ({ labels: { outcome }, value })),
        },
        counter('parked', 'Messages that this worker parked.', events.parked),
        counter('retries', 'Tries that failed and are followed by another.', events.retried),
        counter('crashes', 'Judging processes that ended by themselves.', events.crashed),
        counter(
          'takeovers',
          'Messages taken over from workers that ended or stood still.',
          events.takenOver,
        ),
        counter(
          'given_back',
          'Messages given back when this worker was told to end.',
          events.givenBack,
        ),
        {
          name: 'truesweep_queue_judging_seconds',
          help: 'How long recordings took from being taken to being filed.',
          type: 'histogram',
          samples: [
            ...bounds.map((bound, i) => ({
              suffix: '_bucket' as const,
              labels: { le: String(bound) },
              value: buckets[i]!,
            })),
            { suffix: '_bucket', labels: { le: '+Inf' }, value: timed },
            { suffix: '_sum', value: seconds },
            { suffix: '_count', value: timed },
          ],
        },
      ];
    },
  };
}
