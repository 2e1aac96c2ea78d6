// Sentences that kinds of sensors share.
export const refit = 'Put it back; after that check that its plug is clean and holds.';
export const readAgain =
  'Read the failing value once more: where the meter shows over range take a higher one first, hold the tips by their insulation, let the sensor settle.';
export const replace = 'If it fails again, the sensor is to be replaced.';
export const betterMeter = 'The meter decides: take a finer range or a better one.';
export const measureLeads =
  'The test leads decide: hold their tips together and take off what the meter shows.';
export const measureSupply = 'The supply decides: measure it at the sensor, at the same time.';
export const plug = 'Its plug and harness, and what only a shaking or hot machine shows.';
