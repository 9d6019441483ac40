import { type Block, caution, type Entry, paragraph } from '../pages/index.js';
import type { EngineKind } from '../reading/index.js';

type Ignition = EngineKind['ignition'];

const KICKS = 'with fuel or oil vapour in a cylinder, the engine kicks or starts';

/** Makes the ignition dead; it stands before the engine is first turned with it. */
export function deadIgnition(ignition: Ignition): readonly Block[] {
  switch (ignition) {
    case 'magneto':
      return [
        caution(
          `Earth the leads of the magneto to the block before you turn the engine. A magneto sparks whenever it is turned, without battery or switch: ${KICKS}.`,
        ),
      ];
    case 'coil':
      return [
        caution(`Disconnect the battery before you turn the engine: with a spark, ${KICKS}.`),
      ];
    default:
      return [
        paragraph('Ignition: not stated in the shed file. Until you know it, take it for both:'),
        caution(
          `Disconnect the battery of a coil, and earth the leads of a magneto to the block, before you turn the engine. A magneto sparks whenever it is turned: ${KICKS}.`,
        ),
      ];
  }
}

/** That it is still dead, before the engine is turned again. */
export function stillDead(ignition: Ignition): string {
  switch (ignition) {
    case 'magneto':
      return 'Leads of the magneto still earthed';
    case 'coil':
      return 'Battery still disconnected';
    default:
      return 'Ignition still dead';
  }
}

/** The gap of the points, where the file does not tell it. Nobody knows whether an ignition that is not stated has any. */
export function pointsByManual(ignition: Ignition): readonly Entry[] {
  return ignition === undefined ? [] : [{ write: "Gap of the points, by the maker's manual" }];
}

/** The spark: by the marks that stand above it, if they do. */
export function sparkTiming(ignition: Ignition, isListed: boolean): readonly Entry[] {
  const how = isListed ? '; set to' : ", by the maker's manual";
  return [
    { write: `${sparkOf(ignition)} timed on the firing stroke of cylinder 1${how}` },
    { write: 'Firing order' },
  ];
}

/** What makes the spark. */
function sparkOf(ignition: Ignition): string {
  if (ignition === undefined) return 'Spark';
  return ignition === 'magneto' ? 'Magneto' : 'Distributor';
}

/** What makes the spark live again. */
export function liveIgnition(ignition: Ignition): string {
  switch (ignition) {
    case 'magneto':
      return 'Leads of the magneto back in place, none left earthed';
    case 'coil':
      return 'Battery connected';
    default:
      return 'Ignition made live again, no lead left earthed';
  }
}
