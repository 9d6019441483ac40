import type { Entry } from '../pages/index.js';
import type { EngineKind } from '../reading/index.js';

type Cooling = EngineKind['cooling'];

/** How the cooling is made ready. */
export function fillingWithCoolant(cooling: Cooling): readonly Entry[] {
  switch (cooling) {
    case 'air':
      return ['Fins and air ducts clean, cowls fitted'];
    case 'hopper':
      return ['Hopper filled with water to the mark, drain cock shut, no leak into a cylinder'];
    case 'water':
      return ['Coolant filled and bled of air, hoses tight, no leak into a cylinder'];
    default:
      return ["Cooling (not stated in the shed file) made ready by the maker's manual"];
  }
}

/** What to watch while it runs. */
export function coolingRuns(cooling: Cooling): readonly Entry[] {
  switch (cooling) {
    case 'air':
      return ['Air blows over every cylinder, no leak of fuel or oil'];
    case 'hopper':
      return ['Hopper topped up as it boils away: never run it low', NO_LEAK];
    case 'water':
      return ['Coolant moves and does not boil', NO_LEAK];
    default:
      return [NO_LEAK];
  }
}

const NO_LEAK = 'No leak of fuel, oil or water';

/** What to do once it has cooled down. */
export function coolingAfter(cooling: Cooling): readonly Entry[] {
  switch (cooling) {
    case 'hopper':
      return ['Hopper and jacket drained if frost may come'];
    case 'water':
      return ['Coolant topped up, and drained or made safe if frost may come'];
    default:
      return [];
  }
}
