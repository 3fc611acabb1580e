package tiewright.rating;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;

/**
 * The numbers that the evidence is about, in a fixed order: forms first, then the extras of pairs that have played, then
 * how much serving is worth in each kind of scoring that was filmed, then what the games of a rubber share.
 *
 * <p>Where forms drift a player has one for each of the {@link Periods} with a game, each a step of a random walk from the one before. Who was
 * rated was rated today; of anybody else nothing is known at the first game.
 */
final class Unknowns {
    private static final double YEAR = 365.25;
    private static final double LEAST_VARIANCE = 1e-12;

    private final Prior prior;
    private final Assumptions assumptions;
    private final LocalDate today;
    private final Periods periods;
    private final Map<PlayerId, LocalDate> lastSeen;
    private final Map<PlayerId, TreeMap<Long, Integer>> players = new LinkedHashMap<>();
    private final Map<Pair, Integer> pairs = new LinkedHashMap<>();
    private final Map<Format.Kind, Integer> serves = new LinkedHashMap<>();
    private final Map<String, Integer> rubbers = new LinkedHashMap<>();
    private int size;

    private Unknowns(Prior prior, Assumptions assumptions, LocalDate today, Periods periods) {
        this.prior = prior;
        this.assumptions = assumptions;
        this.today = today;
        this.periods = periods;
        this.lastSeen = new HashMap<>();
    }

    static Unknowns of(Prior prior, Evidence evidence, Assumptions assumptions) {
        Unknowns unknowns = new Unknowns(
                prior,
                assumptions,
                evidence.latest(),
                assumptions.drift() == 0 ? Periods.none() : Periods.of(evidence));
        prior.forms().keySet().stream().sorted().forEach(player -> unknowns.see(player, unknowns.today));
        evidence.games()
                .forEach(game -> Stream.of(game.home(), game.away()).forEach(pair -> unknowns.see(pair, game.date())));
        evidence.films()
                .forEach(film -> Stream.of(film.one(), film.two())
                        .forEach(pair -> unknowns.see(pair, film.played().orElse(unknowns.today))));
        unknowns.players.values().forEach(forms -> forms.replaceAll((period, any) -> unknowns.size++));
        unknowns.pairs.replaceAll((pair, any) -> unknowns.size++);
        evidence.films()
                .forEach(film -> unknowns.serves.computeIfAbsent(film.format().kind(), kind -> unknowns.size++));
        if (assumptions.shared() > 0) {
            evidence.games().stream()
                    .flatMap(game -> game.rubber().stream())
                    .forEach(rubber -> unknowns.rubbers.computeIfAbsent(rubber, any -> unknowns.size++));
        }
        return unknowns;
    }

    private void see(Pair pair, LocalDate day) {
        see(pair.first(), day);
        see(pair.second(), day);
        pairs.put(pair, -1);
    }

    private void see(PlayerId player, LocalDate day) {
        players.computeIfAbsent(player, any -> new TreeMap<>()).put(periods.at(day), -1);
        lastSeen.merge(player, day, (one, other) -> one.isAfter(other) ? one : other);
    }

    /** By how much a form moves in so many days: a variance. */
    private double moved(long days) {
        return assumptions.drift() * assumptions.drift() * Math.max(0, days) / YEAR;
    }

    /** What is believed of each before any game; of a form that follows from another nothing, and its variance is endless. */
    private List<Optional<Estimate>> priors(Assumptions under) {
        List<Optional<Estimate>> estimates = new ArrayList<>();
        players.forEach((player, forms) -> {
            long known = prior.isRated(player) ? forms.lastKey() : forms.firstKey();
            forms.keySet()
                    .forEach(period -> estimates.add(
                            period == known ? Optional.of(prior.form(player, under.formSpread())) : Optional.empty()));
        });
        pairs.keySet().forEach(pair -> estimates.add(Optional.of(prior.extra(pair, under.extraSpread()))));
        serves.keySet().forEach(kind -> estimates.add(Optional.of(Prior.SERVE)));
        rubbers.keySet().forEach(any -> estimates.add(Optional.of(Estimate.of(0, under.shared()))));
        return estimates;
    }

    double[] means(Assumptions under) {
        return priors(under).stream()
                .mapToDouble(each -> each.map(Estimate::mean).orElse(0.0))
                .toArray();
    }

    double[] precisions(Assumptions under) {
        return priors(under).stream()
                .mapToDouble(each -> each.map(known -> 1 / Math.max(known.variance(), LEAST_VARIANCE))
                        .orElse(0.0))
                .toArray();
    }

    /** How forms follow from each other. */
    List<Observation> steps() {
        List<Observation> steps = new ArrayList<>();
        players.values()
                .forEach(forms -> forms.forEach((period, index) -> {
                    Map.@Nullable Entry<Long, Integer> next = forms.higherEntry(period);
                    if (next != null) {
                        steps.add(new Observation(
                                new int[] {index, next.getValue()},
                                new double[] {1, -1},
                                new Step(moved((next.getKey() - period) * periods.days()))));
                    }
                }));
        return steps;
    }

    /** A final score: it depends on the edge, and on what the games of its rubber share. */
    Observation observed(PastGame game, Likelihood says) {
        Optional<Integer> rubber = game.rubber().map(rubbers::get);
        int[] at = edge(game.home(), game.away(), game.date(), rubber.isPresent() ? 1 : 0);
        double[] weights = weights(rubber.isPresent() ? 1 : 0);
        rubber.ifPresent(index -> {
            at[6] = index;
            weights[6] = game.home().compareTo(game.away()) < 0 ? 1 : -1; // the same side of the rubber, whoever won
        });
        return new Observation(at, weights, says);
    }

    /** Rallies that one pair served: they depend on its edge and on what serving is worth. */
    Observation observed(FilmedGame film, boolean oneServes, Likelihood says) {
        LocalDate day = film.played().orElse(today);
        int[] at = oneServes ? edge(film.one(), film.two(), day, 1) : edge(film.two(), film.one(), day, 1);
        at[6] = of(film.format().kind()).orElseThrow();
        return new Observation(at, weights(1), says);
    }

    private int[] edge(Pair one, Pair other, LocalDate day, int more) {
        int[] at = new int[6 + more];
        at[0] = at(one.first(), day);
        at[1] = at(one.second(), day);
        at[2] = of(one).orElseThrow();
        at[3] = at(other.first(), day);
        at[4] = at(other.second(), day);
        at[5] = of(other).orElseThrow();
        return at;
    }

    private static double[] weights(int more) {
        return more == 0 ? new double[] {0.5, 0.5, 1, -0.5, -0.5, -1} : new double[] {0.5, 0.5, 1, -0.5, -0.5, -1, 1};
    }

    private int at(PlayerId player, LocalDate day) {
        return Objects.requireNonNull(
                Objects.requireNonNull(players.get(player)).get(periods.at(day)));
    }

    /** The form of the player at the last game. */
    OptionalInt of(PlayerId player) {
        @Nullable TreeMap<Long, Integer> forms = players.get(player);
        return index(forms == null ? null : forms.lastEntry().getValue());
    }

    /** How far it may have moved by this day: a variance. */
    double movedBy(PlayerId player, LocalDate day) {
        @Nullable LocalDate last = lastSeen.get(player);
        return last == null ? 0 : moved(ChronoUnit.DAYS.between(last, day));
    }

    OptionalInt of(Pair pair) {
        return index(pairs.get(pair));
    }

    OptionalInt of(Format.Kind kind) {
        return index(serves.get(kind));
    }

    private static OptionalInt index(@Nullable Integer index) {
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    Estimate formBefore(PlayerId player) {
        return prior.form(player, assumptions.formSpread());
    }

    Estimate extraBefore(Pair pair) {
        return prior.extra(pair, assumptions.extraSpread());
    }

    Assumptions assumptions() {
        return assumptions;
    }

    LocalDate today() {
        return today;
    }
}
