package tiewright.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.Tie;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/**
 * A filmed game held against its card: the card as the film notes have it, and the result of its rubber.
 *
 * @param replay with what the card settles of unsure rallies
 */
public record CardCheck(FilmGame game, Replay replay, List<Conflict> conflicts) {
    /** Whose score the rallies do not give. */
    public enum Source {
        /** card_1 and card_2 of the film notes. */
        NOTES("notes"),
        /** The result of the tie and rubber. */
        RESULT("result");

        private final String code;

        Source(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** @param says the score there, side one first; of a rubber of several games each of them */
    public record Conflict(Source source, List<Score> says) {}

    public CardCheck {
        conflicts = List.copyOf(conflicts);
    }

    public static CardCheck of(FilmGame game, OnCard result) {
        Format format = game.start().format();
        Predicate<Score> card = score -> game.card().isEmpty()
                || game.card().get().equals(score)
                || result.retirer().isPresent()
                        && new OnCard(List.of(game.card().get()), result.retirer()).fits(format, score);
        Predicate<Score> counts = score -> result.games().isEmpty() || result.fits(format, score);
        Replay replay = Replay.of(game.start(), game.rallies(), card.and(counts));
        if (replay.scores().stream().noneMatch(card.and(counts))) {
            replay = Replay.of(game.start(), game.rallies(), card);
        }
        List<Conflict> conflicts = new ArrayList<>();
        if (replay.scores().stream().noneMatch(card)) {
            conflicts.add(new Conflict(Source.NOTES, List.of(game.card().orElseThrow())));
        }
        if (replay.scores().stream().noneMatch(counts)) {
            conflicts.add(new Conflict(Source.RESULT, result.games()));
        }
        return new CardCheck(game, replay, conflicts);
    }

    /** Held against the result that counts for its rubber in the event, where there is one; a walkover is none. */
    public static CardCheck within(Event event, FilmGame game) {
        Optional<Tie> tie = game.tie().flatMap(event::tie);
        Optional<OnCard> result = tie.flatMap(one -> event.progress(one).rubbers().stream()
                .filter(score -> game.rubber().filter(score.rubber()::equals).isPresent()
                        && !score.how().isWalkover())
                .findFirst()
                .map(score -> OnCard.of(
                        game, tie, score, player -> event.player(player).map(Player::club))));
        return result.map(card -> of(game, card)).orElseGet(() -> of(game));
    }

    /** With nothing to hold it against but its own notes. */
    public static CardCheck of(FilmGame game) {
        return of(game, OnCard.NOTHING);
    }

    public Optional<Impossible> firstImpossible() {
        return replay.firstImpossible();
    }

    /** The rallies do not give what the card says, or cannot have been as noted. */
    public boolean isInConflict() {
        return !conflicts.isEmpty() || firstImpossible().isPresent();
    }

    /**
     * The first rally after which a side has more points than on the card, whatever unsure rallies were: from there on the card cannot be reached.
     * Empty where it never comes to that, or nothing is in conflict.
     */
    public Optional<Integer> beyondCard() {
        if (conflicts.isEmpty() || conflicts.get(0).says().size() != 1) {
            return Optional.empty();
        }
        Score card = conflicts.get(0).says().get(0);
        List<Step> steps = replay.steps();
        for (int i = 0; i < steps.size(); i++) {
            boolean last = i + 1 == steps.size();
            List<Score> after = last
                    ? List.copyOf(replay.scores())
                    : steps.get(i + 1).before().stream().map(Situation::score).toList();
            if (!after.isEmpty() && after.stream().allMatch(score -> exceeds(score, card))) {
                return Optional.of(steps.get(i).note().number());
            }
        }
        return Optional.empty();
    }

    private static boolean exceeds(Score score, Score card) {
        return SideNo.ONE.pointsIn(score) > card.home() || SideNo.TWO.pointsIn(score) > card.away();
    }
}
