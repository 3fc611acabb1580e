package tiewright.lineup.club;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Tie;
import tiewright.lineup.Wish;
import tiewright.rating.Ageing;
import tiewright.rating.Estimate;
import tiewright.rating.Evidence;
import tiewright.rating.Prior;

/** A club's own notes for one tie: what its captain judges and wishes. The last note about the same counts. */
final class OwnNotes {
    private final Event event;
    private final ClubId club;
    private final Map<PlayerId, Estimate> forms = new HashMap<>();
    private final Map<Pair, PrivateNote.ChemistryJudged> chemistry = new LinkedHashMap<>();
    private Optional<PrivateNote.TieWish> wish = Optional.empty();
    private OptionalInt halfLife = OptionalInt.empty();

    OwnNotes(Event event, Tie tie, ClubId club, List<PrivateNote> notes) {
        this.event = event;
        this.club = club;
        for (PrivateNote note : notes) {
            if (note instanceof PrivateNote.FormJudged form) {
                Prior.form(form)
                        .ifPresentOrElse(given -> forms.put(form.player(), given), () -> forms.remove(form.player()));
            } else if (note instanceof PrivateNote.ChemistryJudged judged
                    && isOurs(judged.pair().first())
                    && isOurs(judged.pair().second())) {
                chemistry.put(judged.pair(), judged);
            } else if (note instanceof PrivateNote.TieWish wished
                    && wished.tie().equals(tie.id())
                    && wished.club().equals(club)) {
                wish = Optional.of(wished);
            } else if (note instanceof PrivateNote.HalfLifeChosen chosen
                    && chosen.club().equals(club)) {
                halfLife = chosen.days();
            }
        }
    }

    private boolean isOurs(PlayerId player) {
        return event.player(player).map(Player::club).filter(club::equals).isPresent();
    }

    /** Rubbers that single players are promised today; the last note about the same counts, and one of 0 ends it. */
    static Map<PlayerId, Integer> promised(Event event, ClubId club, List<PrivateNote> notes) {
        Map<PlayerId, Integer> promised = new HashMap<>();
        for (PrivateNote note : notes) {
            if (note instanceof PrivateNote.RubbersPromised promise
                    && event.player(promise.player())
                            .map(Player::club)
                            .filter(club::equals)
                            .isPresent()) {
                promised.put(promise.player(), promise.rubbers());
            }
        }
        promised.values().removeIf(rubbers -> rubbers == 0);
        return promised;
    }

    /** How much older games count for this captain. */
    Ageing ageing() {
        return Evidence.ageing(event, halfLife);
    }

    Prior prior() {
        return Prior.of(forms, chemistry.values());
    }

    /** Pairs first, in the order in which they were judged, then who must play and who must rest. */
    List<Wish> wishes() {
        Stream<Wish> pairs = chemistry.values().stream()
                .flatMap(judged -> judged.wish().stream().map(kind -> wish(judged.pair(), kind)));
        Stream<Wish> players = wish.stream()
                .flatMap(given -> Stream.concat(
                        given.mustPlay().stream().filter(this::isOurs).map(Wish::mustPlay),
                        given.mustRest().stream().filter(this::isOurs).map(Wish::mustRest)));
        return Stream.concat(pairs, players).distinct().toList();
    }

    private static Wish wish(Pair pair, PairWish kind) {
        return switch (kind) {
            case TOGETHER -> Wish.together(pair);
            case APART -> Wish.apart(pair);
        };
    }
}
