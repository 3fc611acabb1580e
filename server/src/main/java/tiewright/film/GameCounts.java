package tiewright.film;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import tiewright.event.PlayerId;
import tiewright.scoring.SideNo;

/** Counts a filmed game: the points that its rallies give, and who won and ended which of them. */
public final class GameCounts {
    private static final List<Measure> OF_PAIRS =
            List.of(Measure.RALLIES_WON, Measure.WON_SERVING, Measure.WON_RECEIVING);
    private static final List<Measure> OF_PLAYERS =
            List.of(Measure.WON_OWN_SERVE, Measure.EARNED, Measure.FORCED, Measure.GAVE);
    /** What is counted only where it was noted at all. */
    private static final Set<Measure> IF_NOTED = EnumSet.range(Measure.SERVE_MISSED, Measure.WON_AFTER_SWITCH);

    private final Replay replay;
    private final Start start;
    private final List<Step> won;
    private final boolean endsAreNoted;
    private final List<Counted> counts = new ArrayList<>();

    private GameCounts(Replay replay, Start start) {
        this.replay = replay;
        this.start = start;
        this.won = replay.steps().stream()
                .filter(step -> step.isPlayed() && step.winner().isPresent())
                .toList();
        this.endsAreNoted = won.stream().anyMatch(step -> ended(step, "serve") || ended(step, "return"));
    }

    /** Every count, pairs and players in the order of the notes; what was never noted is left out, for it is unknown and not nothing. */
    public static List<Counted> of(CardCheck check) {
        GameCounts game = new GameCounts(check.replay(), check.game().start());
        game.points();
        OF_PAIRS.forEach(game::pairs);
        OF_PLAYERS.forEach(game::players);
        IF_NOTED.forEach(game::ifNoted);
        List<RallyNote> notes = check.game().rallies();
        game.counts.add(Counted.plain("game", Measure.RALLIES, notes.size()));
        game.counts.add(Counted.plain("game", Measure.REPLAYED, (int)
                notes.stream().filter(note -> note.ending() == Ending.REPLAY).count()));
        game.counts.add(Counted.plain("game", Measure.UNSURE, (int)
                notes.stream().filter(note -> note.ending() == Ending.UNSURE).count()));
        return List.copyOf(game.counts);
    }

    private void points() {
        for (SideNo side : SideNo.values()) {
            int[] open =
                    replay.scores().stream().mapToInt(side::pointsIn).sorted().toArray();
            counts.add(Counted.between(
                    start.pair(side).toString(),
                    Measure.SCORE,
                    side.pointsIn(replay.score()),
                    open[0],
                    open[open.length - 1]));
        }
    }

    private void pairs(Measure measure) {
        for (SideNo side : SideNo.values()) {
            counts.add(share(
                    start.pair(side).toString(),
                    measure,
                    step -> counts(measure, step, side),
                    step -> step.winner().get() == side));
        }
    }

    private static boolean counts(Measure measure, Step step, SideNo side) {
        return switch (measure) {
            case WON_SERVING -> step.serving().filter(side::equals).isPresent();
            case WON_RECEIVING -> step.serving().filter(side.other()::equals).isPresent();
            case WON_AFTER_SOFT_THIRD ->
                step.serving().filter(side::equals).isPresent()
                        && step.note().detail().third().filter("soft"::equals).isPresent();
            case WON_AFTER_HARD_THIRD ->
                step.serving().filter(side::equals).isPresent()
                        && step.note().detail().third().filter("hard"::equals).isPresent();
            case WON_AFTER_STAY ->
                step.serving().filter(side.other()::equals).isPresent()
                        && step.note().detail().signal().filter("stay"::equals).isPresent();
            case WON_AFTER_SWITCH ->
                step.serving().filter(side.other()::equals).isPresent()
                        && step.note()
                                .detail()
                                .signal()
                                .filter("switch"::equals)
                                .isPresent();
            default -> true;
        };
    }

    private void players(Measure measure) {
        for (PlayerId player : start.players()) {
            counts.add(of(measure, player));
        }
    }

    private Counted of(Measure measure, PlayerId player) {
        SideNo side = start.side(player);
        Predicate<Step> ownWon = step -> step.winner().get() == side;
        Predicate<Step> served = step -> step.server().filter(player::equals).isPresent();
        Predicate<Step> received =
                step -> step.receiver().filter(player::equals).isPresent();
        BiPredicate<Step, String> returned = (step, how) -> received.test(step)
                && step.note().detail().returned().filter(how::equals).isPresent();
        String subject = player.code();
        return switch (measure) {
            case WON_OWN_SERVE -> share(subject, measure, served, ownWon);
            case EARNED -> share(subject, measure, step -> true, step -> isEndedBy(step, player, Ending.EARNED));
            case FORCED -> share(subject, measure, step -> true, step -> isEndedBy(step, player, Ending.FORCED));
            case GAVE -> share(subject, measure, step -> true, step -> isEndedBy(step, player, Ending.GAVE));
            case SERVE_MISSED ->
                share(subject, measure, step -> endsAreNoted && served.test(step), step -> ended(step, "serve"));
            case RETURN_MISSED ->
                share(
                        subject,
                        measure,
                        step -> endsAreNoted && received.test(step) && !ended(step, "serve"),
                        step -> ended(step, "return"));
            case DEEP_RETURN ->
                share(
                        subject,
                        measure,
                        step -> returned.test(step, "deep") || returned.test(step, "short"),
                        step -> returned.test(step, "deep"));
            case WON_AFTER_DEEP_RETURN -> share(subject, measure, step -> returned.test(step, "deep"), ownWon);
            case WON_AFTER_SHORT_RETURN -> share(subject, measure, step -> returned.test(step, "short"), ownWon);
            case THIRD_TO ->
                share(
                        subject,
                        measure,
                        step -> thirdTo(step)
                                        .map(start::side)
                                        .filter(side::equals)
                                        .isPresent()
                                && step.serving().filter(side.other()::equals).isPresent(),
                        step -> thirdTo(step).filter(player::equals).isPresent());
            default -> throw new IllegalArgumentException(measure + " is not counted by player");
        };
    }

    private void ifNoted(Measure measure) {
        int before = counts.size();
        switch (measure) {
            case WON_AFTER_SOFT_THIRD, WON_AFTER_HARD_THIRD, WON_AFTER_STAY, WON_AFTER_SWITCH -> pairs(measure);
            default -> players(measure);
        }
        List<Counted> more = counts.subList(before, counts.size());
        more.removeIf(count -> count.outOf().orElse(0) == 0);
    }

    private static Optional<PlayerId> thirdTo(Step step) {
        return step.note().detail().thirdTo();
    }

    private static boolean isEndedBy(Step step, PlayerId player, Ending ending) {
        return step.note().ending() == ending
                && step.note().player().filter(player::equals).isPresent();
    }

    private static boolean ended(Step step, String where) {
        return step.note().detail().where().filter(where::equals).isPresent();
    }

    private Counted share(String subject, Measure measure, Predicate<Step> among, Predicate<Step> which) {
        List<Step> of = won.stream().filter(among).toList();
        return Counted.share(subject, measure, (int) of.stream().filter(which).count(), of.size());
    }
}
