import type { WayStep } from '@truesweep/wording';
import type { ComponentType } from 'preact';
import type { CalculatorProps } from '../forms/Calculator.js';
import { namesOf } from '../forms/form.js';

/** A step's calculator with the names of its entries. */
export interface StepPart {
  readonly Part: ComponentType<CalculatorProps>;
  readonly names: readonly string[];
}

const terminals = async (): Promise<StepPart> => {
  const [{ OwnTerminals }, { ownTerminalsForm }] = await Promise.all([
    import('../calculators/FindTerminals.js'),
    import('../calculators/findTerminals.js'),
  ]);
  return { Part: OwnTerminals, names: namesOf(ownTerminalsForm) };
};

/** The calculators of the steps, loaded when their step is reached. */
export const stepParts: Readonly<Partial<Record<WayStep, () => Promise<StepPart>>>> = {
  terminals,
  'terminals-open': terminals,
  'hook-up': async () => {
    const [{ PlanHookUp }, { planHookUpForm }] = await Promise.all([
      import('../calculators/PlanHookUp.js'),
      import('../calculators/planHookUp.js'),
    ]);
    return { Part: PlanHookUp, names: namesOf(planHookUpForm) };
  },
  readings: async () => {
    const [{ ExpectedReadings }, { expectedReadingsForm }] = await Promise.all([
      import('../calculators/ExpectedReadings.js'),
      import('../calculators/expectedReadings.js'),
    ]);
    return { Part: ExpectedReadings, names: namesOf(expectedReadingsForm) };
  },
  instrument: async () => {
    const [{ WhichInstrument }, { whichInstrumentForm }] = await Promise.all([
      import('../calculators/WhichInstrument.js'),
      import('../calculators/whichInstrument.js'),
    ]);
    return { Part: WhichInstrument, names: namesOf(whichInstrumentForm) };
  },
};
