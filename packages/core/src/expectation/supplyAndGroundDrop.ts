import { checkFields, checkKind, type FieldRules } from '../fields.js';
import { between, finiteBetween } from '../guard.js';
import type { Amps, Fraction, Ohms, Volts } from '../units.js';

/** What a voltmeter showed along the sensor's supply and ground, with everything plugged in and switched on. */
export interface DropReadings {
  /** Reference at the control unit, above the unit's ground pin, V; above 0. */
  readonly reference: Volts;
  /** Reference at the sensor's supply terminal, above its ground terminal, V. */
  readonly referenceAtSensor: Volts;
  /** Sensor's ground terminal above the control unit's ground pin, V. */
  readonly sensorGround: Volts;
  /** Control unit's ground pin above the battery's negative, V; 0 when left out. */
  readonly unitGround?: Volts;
  /** Standard uncertainty of each of these voltages, V; 0 when left out. */
  readonly uncertainty?: Volts;
}

const someVolts = between(1e-6, 100, 'V');
const drop = between(-100, 100, 'V');

const dropRules: FieldRules = {
  reference: someVolts,
  referenceAtSensor: someVolts,
  sensorGround: drop,
  'unitGround?': drop,
  'uncertainty?': between(0, 100, 'V'),
};

const currentRules = {
  amps: { amps: between(1e-9, 100, 'A') },
  'second-load': { ohms: between(1e-3, 1e9, 'Ω'), readings: checkDrops },
};

/** What is known of the current in the supply and ground leads. */
export type LeadCurrent =
  /** A current that was measured. */
  | {
      readonly kind: 'amps';
      /** The current in the leads, A, from 10⁻⁹ to 100. */
      readonly amps: Amps;
    }
  /**
   * The sensor alone first, then the readings again with a known resistor across its supply and ground
   * terminals: the two loads tell the lead's resistance whatever the sensor itself takes.
   */
  | {
      readonly kind: 'second-load';
      /** The known resistor, Ω, from 10⁻³ to 10⁹. */
      readonly ohms: Ohms;
      /** The readings with the resistor in place. */
      readonly readings: DropReadings;
    };

/** A lead's resistance, or why the readings don't determine it. */
export type LeadOhms =
  | {
      readonly kind: 'ohms';
      /** The lead's resistance, Ω, 0 or more. */
      readonly ohms: Ohms;
      /** Its standard uncertainty, Ω, 0 or more. */
      readonly uncertainty: Ohms;
    }
  /** Nothing is known of the current, or the readings would need a resistance below 0 Ω. */
  | {
      readonly kind: 'not-determined';
      /** Which of the two it is. */
      readonly reason: 'current-unknown' | 'contradictory';
    };

/** What the drops along supply and ground do to the reading. */
export interface SupplyAndGroundDrop {
  /** Lost between the unit's reference pin and the sensor's supply terminal, V. */
  readonly supplyDrop: Volts;
  /** Error of the signal with the wiper at the bottom of the track, as a fraction of the reference. */
  readonly bottomError: Fraction;
  /** Error with the wiper at the top of the track, as a fraction of the reference; between the two it is a straight line. */
  readonly topError: Fraction;
  /** The larger of the two, without sign. */
  readonly worstError: Fraction;
  /** Whether the larger one is above the criterion. */
  readonly matters: boolean;
  /**
   * Error that a meter from the battery's negative would show at the bottom of the track, as a fraction of the
   * reference: the control unit does not see the part between its own ground pin and the battery.
   */
  readonly seenFromBattery: Fraction;
  /** Resistance of the supply lead. */
  readonly supplyLead: LeadOhms;
  /** Resistance of the ground lead. */
  readonly groundLead: LeadOhms;
}

/**
 * What voltage drops in a sensor's supply and ground wiring do to the reading, as the control unit sees it.
 *
 * The unit compares the signal with its own reference and ground pins. What the ground lead drops lifts the bottom of
 * the track; what the supply lead drops lowers its top; what lies between the unit's ground pin and the battery is in
 * neither. A drop alone says nothing of ohms: that needs the current, or the drop under a second, known load.
 *
 * @param readings The voltages; each −100 to 100 V.
 * @param criterion Largest error that doesn't matter, as a fraction of the reference, 0 to 1; 0.01 when left out
 * (common practice, no source).
 * @param current What is known of the leads' current; nothing when left out.
 * @throws InputError at `readings…`, `criterion` or `current…`.
 *
 * @example
 * const drop = supplyAndGroundDrop({ reference: 5, referenceAtSensor: 4.85, sensorGround: 0.1 });
 * drop.bottomError // => ≈ 0.02
 * drop.topError // => ≈ -0.01
 * drop.matters // => true
 */
export function supplyAndGroundDrop(
  readings: DropReadings,
  criterion: Fraction = 0.01,
  current?: LeadCurrent,
): SupplyAndGroundDrop {
  checkDrops(readings, 'readings');
  finiteBetween(criterion, 0, 1, 'criterion');
  if (current !== undefined) checkKind(current, 'current', currentRules);
  const { reference, sensorGround, unitGround = 0 } = readings;
  const supplyDrop = supplyDropOf(readings);
  const bottomError = sensorGround / reference;
  const topError = -supplyDrop / reference;
  const worstError = Math.max(Math.abs(bottomError), Math.abs(topError));
  return {
    supplyDrop,
    bottomError,
    topError,
    worstError,
    matters: worstError > criterion,
    seenFromBattery: (sensorGround + unitGround) / reference,
    supplyLead: leadOhms(readings, current, supplyDropOf, Math.sqrt(3)),
    groundLead: leadOhms(readings, current, (at) => at.sensorGround, 1),
  };
}

function supplyDropOf({ reference, referenceAtSensor, sensorGround }: DropReadings): Volts {
  return reference - referenceAtSensor - sensorGround;
}

/**
 * The drop d = r·I. With a second load R beside the sensor's own conductance g: d₁ = r·g·v₁ and d₂ = r·(g + 1/R)·v₂,
 * so r = R·(d₂/v₂ − d₁/v₁). `doubt`: by how much a voltage's uncertainty grows in the drop.
 */
function leadOhms(
  readings: DropReadings,
  current: LeadCurrent | undefined,
  dropOf: (at: DropReadings) => Volts,
  doubt: number,
): LeadOhms {
  if (current === undefined) return { kind: 'not-determined', reason: 'current-unknown' };
  const drop = dropOf(readings);
  const { uncertainty = 0, referenceAtSensor } = readings;
  if (current.kind === 'amps') {
    return atLeastNothing(drop / current.amps, (doubt * uncertainty) / current.amps);
  }
  const { ohms, readings: loaded } = current;
  const change = dropOf(loaded) / loaded.referenceAtSensor - drop / referenceAtSensor;
  const spread = Math.hypot(
    (loaded.uncertainty ?? 0) / loaded.referenceAtSensor,
    uncertainty / referenceAtSensor,
  );
  return atLeastNothing(ohms * change, ohms * doubt * spread);
}

/** Below 0 Ω by no more than twice the uncertainty is 0 Ω. */
function atLeastNothing(ohms: number, uncertainty: number): LeadOhms {
  return ohms < -2 * uncertainty
    ? { kind: 'not-determined', reason: 'contradictory' }
    : { kind: 'ohms', ohms: Math.max(0, ohms), uncertainty };
}

function checkDrops(readings: unknown, path: string): void {
  checkFields(readings, path, dropRules);
}
