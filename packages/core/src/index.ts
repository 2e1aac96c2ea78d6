// Everything but the schemas, which need another package: all entries by use together.
export * from './bench.js';
export * from './checks.js';
export * from './circuit.js';
export * from './compare.js';
export * from './envelope.js';
export * from './expectation.js';
export * from './instruments.js';
export * from './live.js';
export * from './model.js';
export * from './pins.js';
export * from './quantity.js';
export * from './score.js';
export * from './shape.js';
export * from './simulate.js';
export * from './statistics.js';
export * from './tracks.js';
