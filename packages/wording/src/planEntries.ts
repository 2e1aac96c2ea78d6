/** The entries of a planned hook-up, besides those of the hook-up itself. */
export type PlanEntry =
  | 'wiperCurrent'
  | 'trackPower'
  | 'sourceCurrent'
  | 'spanKept'
  | 'otherSource';

/**
 * What each rating and wish of a planned hook-up is called.
 *
 * @example
 * planLabels.wiperCurrent // => "Wiper's largest current"
 */
export const planLabels: Readonly<Record<PlanEntry, string>> = {
  wiperCurrent: "Wiper's largest current",
  trackPower: "Track's largest power",
  sourceCurrent: "Source's largest current",
  spanKept: 'Span that must remain',
  otherSource: 'Another source at hand',
};

/**
 * What each rating and wish of a planned hook-up means, in one line.
 *
 * @example
 * planHints.spanKept // => 'Part of the readings from stop to stop that the limiting resistor may not cost.'
 */
export const planHints: Readonly<Record<PlanEntry, string>> = {
  wiperCurrent: "From the sensor's data; often 1 mA for a conductive-plastic track.",
  trackPower: "From the sensor's data; leave empty if it is not known.",
  sourceCurrent: 'What the bench supply may deliver; leave empty if it limits itself.',
  spanKept: 'Part of the readings from stop to stop that the limiting resistor may not cost.',
  otherSource: 'Such as a 12 V battery on the same bench; looked at as a wrong connection.',
};

/**
 * Headings of a planned hook-up's form.
 *
 * @example
 * planTitles.ratings // => 'What the parts bear'
 */
export const planTitles = {
  ratings: 'What the parts bear',
  wishes: 'What else to look at',
} as const satisfies Record<string, string>;
