package tiewright.draw;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tiewright.event.ClubId;

/** Everything that keeps pools from being drawn as asked. */
final class PoolDrawFaults {
    private PoolDrawFaults() {}

    static List<DrawFault> of(List<Entrant> entrants, int pools, String spokenSeed) {
        List<DrawFault> faults = new ArrayList<>();
        if (PublicLot.spoken(spokenSeed).isEmpty()) {
            faults.add(DrawFault.of(DrawFault.Code.NO_SPOKEN_SEED, ""));
        }
        ofClubs(entrants, faults);
        ofSizes(entrants.size(), pools, faults);
        return faults;
    }

    private static void ofClubs(List<Entrant> entrants, List<DrawFault> faults) {
        Set<ClubId> clubs = new HashSet<>();
        Set<Integer> seeds = new HashSet<>();
        for (Entrant entrant : entrants) {
            String code = entrant.club().code();
            if (!clubs.add(entrant.club())) {
                faults.add(DrawFault.of(DrawFault.Code.CLUB_TWICE, code));
            }
            entrant.seed().ifPresent(seed -> {
                if (seed < 1) {
                    faults.add(new DrawFault(DrawFault.Code.SEED_BELOW_ONE, code, seed, 1));
                } else if (!seeds.add(seed)) {
                    faults.add(new DrawFault(DrawFault.Code.SEED_TWICE, code, seed, 0));
                }
            });
        }
    }

    private static void ofSizes(int clubs, int pools, List<DrawFault> faults) {
        if (pools < 1) {
            faults.add(DrawFault.of(DrawFault.Code.NO_POOL, pools, 1));
        } else if (pools > PoolDraw.MOST_POOLS) {
            faults.add(DrawFault.of(DrawFault.Code.TOO_MANY_POOLS, pools, PoolDraw.MOST_POOLS));
        } else if (clubs < 2 * pools) {
            faults.add(DrawFault.of(DrawFault.Code.POOL_TOO_SMALL, clubs, 2 * pools));
        } else if (clubs > Berger.LARGEST * pools) {
            faults.add(DrawFault.of(DrawFault.Code.POOL_TOO_LARGE, clubs, Berger.LARGEST * pools));
        }
    }
}
