package tiewright.rating;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.event.PlayerId;

/**
 * Form of players and chemistry of pairs, each with its doubt, what it rests on and what it is good for.
 *
 * @param lines players in the order asked, then their pairs in the same order
 */
public record Ratings(List<Line> lines, Strengths strengths, Evidence evidence) {
    /** From so many rallies on film the form of a player is worth a first look, and worth acting on. */
    static final int FORM_SHOWN = 40;

    static final int FORM_USED = 200;

    /** From so many rallies on film, with changing partners, the extra of a pair is worth acting on. */
    static final int EXTRA_USED = 400;

    public Ratings {
        lines = List.copyOf(lines);
    }

    /** What a line is about. */
    public enum Kind {
        FORM("form"),
        CHEMISTRY("chemistry");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /**
     * One player or pair.
     *
     * @param players one or two
     * @param estimate form, or the extra of the pair
     * @param whole form, or mean form and extra together
     * @param judged a captain has given a rating to begin with
     */
    public record Line(
            Kind kind,
            List<PlayerId> players,
            Estimate estimate,
            Estimate whole,
            Seen seen,
            Verdict verdict,
            boolean judged) {
        public Line {
            players = List.copyOf(players);
        }
    }

    /**
     * The ratings of these players and of the pairs among them that have played or were rated.
     *
     * @param squads who is asked about; a pair is of two players of one squad
     */
    public static Ratings of(Prior prior, Evidence evidence, List<? extends Collection<PlayerId>> squads) {
        Strengths strengths = Rating.fit(prior, evidence);
        Separation separation = Separation.of(evidence);
        List<Line> lines = new ArrayList<>();
        squads.forEach(squad -> squad.forEach(player -> lines.add(form(player, prior, strengths, evidence))));
        Set<Pair> known = new HashSet<>(prior.pairs());
        evidence.games().forEach(game -> known.addAll(List.of(game.home(), game.away())));
        evidence.films().forEach(film -> known.addAll(List.of(film.one(), film.two())));
        for (Collection<PlayerId> squad : squads) {
            pairs(List.copyOf(squad))
                    .filter(known::contains)
                    .forEach(pair -> lines.add(chemistry(pair, prior, strengths, evidence, separation)));
        }
        return new Ratings(lines, strengths, evidence);
    }

    private static Stream<Pair> pairs(List<PlayerId> squad) {
        return Stream.iterate(0, i -> i + 1)
                .limit(squad.size())
                .flatMap(i -> squad.subList(i + 1, squad.size()).stream().map(other -> Pair.of(squad.get(i), other)));
    }

    private static Line form(PlayerId player, Prior prior, Strengths strengths, Evidence evidence) {
        Seen seen = Seen.of(evidence, pair -> pair.has(player));
        Estimate form = strengths.form(player);
        Verdict verdict = seen.rallies() < FORM_SHOWN
                ? Verdict.NOT_ENOUGH_FILM
                : seen.rallies() < FORM_USED ? Verdict.FIRST_LOOK : Verdict.ofChance(form);
        return new Line(Kind.FORM, List.of(player), form, form, seen, verdict, prior.isRated(player));
    }

    private static Line chemistry(
            Pair pair, Prior prior, Strengths strengths, Evidence evidence, Separation separation) {
        Seen seen = Seen.of(evidence, pair::equals);
        Estimate extra = strengths.extra(pair);
        boolean tied = separation.isOnlyEver(pair) && seen.games() > 0
                || seen.rallies() >= EXTRA_USED && separation.isTied(pair);
        Verdict verdict = tied
                ? Verdict.CANNOT_TELL_APART
                : seen.rallies() < EXTRA_USED ? Verdict.NOT_ENOUGH_FILM : Verdict.ofChance(extra);
        return new Line(
                Kind.CHEMISTRY,
                pair.players(),
                extra,
                strengths.rating(pair),
                seen,
                verdict,
                prior.pairs().contains(pair));
    }
}
