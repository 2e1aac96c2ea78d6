import {
  type Circuit,
  type DigitalMeter,
  digitalDisplay,
  type Seconds,
  type Sweep,
  simulateSweep,
  withInstrument,
} from '@truesweep/core';

/** One slow opening, its wiper lifted for a while at half of it: the signal, and what the meter's display said meanwhile. */
export function meterDisplay(circuit: Circuit, meter: DigitalMeter, seconds: Seconds) {
  const { sweep } = simulateSweep({
    circuit: { ...circuit, load: withInstrument(circuit.load, meter) },
    movements: [
      { kind: 'hold', seconds: 0.5 },
      { kind: 'turn', to: 1, seconds: 3 },
      { kind: 'hold', seconds: 0.5 },
    ],
    recorder: { interval: 0.001 },
    faults: [{ kind: 'loose-connection', at: [{ time: 2 - seconds / 2, seconds }] }],
    seed: 1,
  });
  const { shown } = digitalDisplay(meter, sweep);
  let at = -1;
  const display: Sweep = {
    time: sweep.time,
    signal: sweep.signal.map((volts, i) => {
      while ((shown[at + 1]?.time ?? Infinity) <= (sweep.time[i] ?? 0)) at++;
      return shown[at]?.volts ?? volts;
    }),
  };
  return { sweep, display };
}
