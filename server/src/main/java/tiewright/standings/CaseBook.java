package tiewright.standings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import tiewright.event.ClubId;
import tiewright.event.Side;
import tiewright.event.TieScore;

/** Gathers outlooks by the club's own results, and under them by each result of another tie. */
final class CaseBook {
    /** With more own ties than this only the cases "all won" and "all lost" are kept. */
    static final int MOST_OWN_TIES = 2;

    private static final Result[] RESULTS = Result.values();

    private final ClubId club;
    private final List<TieScore> open;
    private final OptionalInt through;
    private final int ownTies;
    private final Map<Integer, Gathered> byOwnResults = new TreeMap<>();
    private Optional<Outlook> all = Optional.empty();

    /** @param open the club's own ties first */
    CaseBook(ClubId club, List<TieScore> open, OptionalInt through) {
        this.club = club;
        this.open = open;
        this.through = through;
        this.ownTies = (int) open.stream().filter(tie -> tie.has(club)).count();
    }

    void note(List<OpenOutcome> ending, Outlook outlook) {
        all = Optional.of(all.map(outlook::and).orElse(outlook));
        int key = 0;
        boolean uniform = true;
        for (int i = 0; i < ownTies; i++) {
            int result = own(i, ending.get(i).tie().result()).ordinal();
            uniform &= i == 0 || key % RESULTS.length == result;
            key = key * RESULTS.length + result;
        }
        if (ownTies <= MOST_OWN_TIES || (uniform && key % RESULTS.length != Result.DRAWN.ordinal())) {
            byOwnResults.computeIfAbsent(key, k -> new Gathered()).note(ending, outlook);
        }
    }

    private Result own(int i, Result ofHome) {
        return open.get(i).home().equals(club) ? ofHome : ofHome.other();
    }

    Outlook all() {
        return all.orElseThrow(() -> new IllegalStateException("nothing was gone through"));
    }

    List<NeedsCase> cases() {
        List<NeedsCase> cases = new ArrayList<>();
        byOwnResults.forEach((key, gathered) -> cases.add(gathered.toCase(ownResults(key))));
        return cases;
    }

    private List<OwnResult> ownResults(int key) {
        List<OwnResult> results = new ArrayList<>();
        int rest = key;
        for (int i = ownTies - 1; i >= 0; i--) {
            TieScore tie = open.get(i);
            ClubId opponent = tie.home().equals(club) ? tie.away() : tie.home();
            results.add(0, new OwnResult(tie.tie(), opponent, RESULTS[rest % RESULTS.length]));
            rest /= RESULTS.length;
        }
        return results;
    }

    /** Everything that can follow one set of own results. */
    private final class Gathered {
        private Optional<Outlook> total = Optional.empty();
        private final Map<Integer, Outlook> byOtherResult = new TreeMap<>();

        void note(List<OpenOutcome> ending, Outlook outlook) {
            total = Optional.of(total.map(outlook::and).orElse(outlook));
            for (int i = ownTies; i < ending.size(); i++) {
                int key = i * RESULTS.length + ending.get(i).tie().result().ordinal();
                byOtherResult.merge(key, outlook, Outlook::and);
            }
        }

        NeedsCase toCase(List<OwnResult> results) {
            Outlook outlook = total.orElseThrow();
            Optional<Prospect> prospect = prospect(outlook);
            List<Help> helps = prospect.equals(Optional.of(Prospect.OPEN)) ? helps() : List.of();
            return new NeedsCase(results, outlook.places(), outlook.mayNeedLot(), outlook.isExact(), prospect, helps);
        }

        private List<Help> helps() {
            List<Help> helps = new ArrayList<>();
            byOtherResult.forEach((key, outlook) -> {
                Prospect prospect = prospect(outlook).orElseThrow();
                if (prospect != Prospect.OPEN) {
                    helps.add(help(open.get(key / RESULTS.length), RESULTS[key % RESULTS.length], prospect));
                }
            });
            return helps;
        }
    }

    private Optional<Prospect> prospect(Outlook outlook) {
        return through.isPresent() ? Optional.of(Prospect.of(outlook.places(), through.getAsInt())) : Optional.empty();
    }

    private static Help help(TieScore tie, Result ofHome, Prospect prospect) {
        Optional<ClubId> winner =
                switch (ofHome) {
                    case WON -> Optional.of(tie.club(Side.HOME));
                    case LOST -> Optional.of(tie.club(Side.AWAY));
                    case DRAWN, LOST_BY_BOTH -> Optional.empty();
                };
        return new Help(tie.tie(), tie.home(), tie.away(), winner, prospect);
    }
}
