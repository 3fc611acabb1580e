package tiewright.event;

import java.util.Map;
import java.util.Optional;

/** Who meets in a tie, said with names and places as they stand at this moment: what was published so keeps them. */
final class AsItStands {
    private AsItStands() {}

    static Saying between(Tie tie, Map<ClubId, Club> clubs) {
        return Saying.of("notices.between")
                .with("home", side(tie.home(), clubs))
                .with("away", side(tie.away(), clubs));
    }

    /** The same with the code of the tie, which will be found nowhere else. */
    static Saying called(Tie tie, Map<ClubId, Club> clubs) {
        return Saying.of("notices.tie-between")
                .with("tie", tie.id())
                .with("home", side(tie.home(), clubs))
                .with("away", side(tie.away(), clubs));
    }

    private static Saying side(Slot slot, Map<ClubId, Club> clubs) {
        return slot.club()
                .map(club -> Saying.typed(
                        Optional.ofNullable(clubs.get(club)).map(Club::name).orElse(club.code())))
                .orElseGet(() -> slot.from().map(AsItStands::source).orElseThrow());
    }

    private static Saying source(SlotSource source) {
        return switch (source.kind()) {
            case POOL_PLACE ->
                Saying.of("notices.place-of-pool").with("place", source.place()).with("pool", source.of());
            case WINNER -> Saying.of("notices.winner").with("tie", source.of());
            case LOSER -> Saying.of("notices.loser").with("tie", source.of());
        };
    }
}
