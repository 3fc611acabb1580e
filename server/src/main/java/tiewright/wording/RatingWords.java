package tiewright.wording;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import tiewright.event.Pair;
import tiewright.rating.Assumptions;
import tiewright.rating.Estimate;
import tiewright.rating.RallyModel;
import tiewright.rating.Ratings;
import tiewright.rating.Ratings.Kind;
import tiewright.rating.Seen;
import tiewright.rating.ServeRates;
import tiewright.rating.Verdict;
import tiewright.scoring.Format;

/** Form and chemistry in sentences: the best guess, its range, what it does to a game, what it rests on, whom they played. */
public final class RatingWords {
    private static final int NAMED_OPPONENTS = 4;

    private final Words words;
    private final Format format;

    /** @param format of the games by which people picture what a rating is worth: those of their event */
    public RatingWords(Words words, Format format) {
        this.words = words;
        this.format = format;
    }

    /** For commands: codes stand for themselves. */
    public static RatingWords ofCodes(Format format) {
        return new RatingWords(Words.ofCodes(ZoneOffset.UTC), format);
    }

    /** A player, or two joined by a plus. */
    public String who(Ratings.Line line) {
        return line.players().stream().map(words::said).collect(Collectors.joining(" + "));
    }

    /** Everything about one player or pair. */
    public List<String> sentences(Ratings ratings, Ratings.Line line) {
        List<String> said = new ArrayList<>();
        boolean form = line.kind() == Kind.FORM;
        said.add(words.sentence(
                form ? "rating.form" : "rating.extra", figures(who(line), line.estimate(), form ? 0.5 : 1)));
        if (!form) {
            said.add(words.sentence("rating.whole", figures(who(line), line.whole(), 1)));
        }
        said.addAll(seen(ratings, line));
        said.add(words.sentence(
                "rating.verdict." + line.kind().code() + "." + line.verdict().code(), Map.of()));
        return said;
    }

    private Map<String, Object> figures(String who, Estimate estimate, double share) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("who", who);
        figures.put("best", figure(estimate.mean()));
        figures.put("game", words.sentence("rating.game-" + format.kind().code(), Map.of("target", format.target())));
        figures.put("low", figure(estimate.low()));
        figures.put("high", figure(estimate.high()));
        figures.put("chance", percent(share * estimate.mean()));
        figures.put("lowChance", percent(share * estimate.low()));
        figures.put("highChance", percent(share * estimate.high()));
        return figures;
    }

    private List<String> seen(Ratings ratings, Ratings.Line line) {
        Seen seen = line.seen();
        String began = line.judged() ? ".judged" : ".unrated";
        if (seen.games() == 0) {
            return List.of(words.sentence("rating.seen-nothing" + began, Map.of()));
        }
        String rests = words.sentence(
                (seen.rallies() == 0 ? "rating.seen-without-film" : "rating.seen") + began,
                Map.of("games", counted(seen.games(), "game"), "rallies", counted(seen.rallies(), "rally")));
        List<String> named = seen.against().stream()
                .limit(NAMED_OPPONENTS)
                .map(this::opponents)
                .collect(Collectors.toCollection(ArrayList::new));
        int more = seen.against().size() - NAMED_OPPONENTS;
        if (more > 0) {
            named.add(words.sentence(more == 1 ? "rating.one-more" : "rating.more", Map.of("more", more)));
        }
        return List.of(
                rests,
                words.sentence(
                        "rating.against",
                        Map.of("opponents", named, "strength", figure(seen.opponents(ratings.strengths())))));
    }

    private String opponents(Seen.Opponents met) {
        return words.sentence(
                met.rallies() == 0 ? "rating.opponents" : "rating.opponents-on-film",
                Map.of(
                        "pair",
                        pair(met.pair()),
                        "games",
                        counted(met.games(), "game"),
                        "rallies",
                        counted(met.rallies(), "rally")));
    }

    /** Such as 1 game, 12 rallies. */
    private String counted(int count, String what) {
        return words.sentence(
                "rating." + (count == 1 ? what : what.endsWith("y") ? "rallies" : what + "s"), Map.of("count", count));
    }

    /** What a line rests on, in a few words. */
    public String counted(Ratings.Line line) {
        return words.sentence(
                line.seen().rallies() == 0 ? "rating.from-without-film" : "rating.from",
                Map.of(
                        "games",
                        counted(line.seen().games(), "game"),
                        "rallies",
                        counted(line.seen().rallies(), "rally")));
    }

    /** How many players and pairs have too little film for more than a line of figures; empty when there are none. */
    public Optional<String> tooLittle(Ratings ratings) {
        Map<Kind, Long> few = ratings.lines().stream()
                .filter(line -> line.verdict() == Verdict.NOT_ENOUGH_FILM)
                .collect(Collectors.groupingBy(Ratings.Line::kind, Collectors.counting()));
        return few.isEmpty()
                ? Optional.empty()
                : Optional.of(words.sentence(
                        "rating.too-little",
                        Map.of(
                                "players",
                                        counted(few.getOrDefault(Kind.FORM, 0L).intValue(), "player"),
                                "pairs",
                                        counted(
                                                few.getOrDefault(Kind.CHEMISTRY, 0L)
                                                        .intValue(),
                                                "pair"))));
    }

    private String pair(Pair pair) {
        return words.said(pair.first()) + " + " + words.said(pair.second());
    }

    /** What all of it rests on, how old games count, and how not to read it. */
    public List<String> notes(Ratings ratings) {
        List<String> said = new ArrayList<>();
        said.add(words.sentence(
                "rating.rests-on",
                Map.of(
                        "games",
                        counted(ratings.evidence().size(), "game"),
                        "rallies",
                        counted(ratings.evidence().rallies(), "rally"))));
        for (Format.Kind kind : Format.Kind.values()) {
            ratings.strengths().serving(kind).ifPresent(worth -> {
                said.add(serving(kind, worth, ratings.strengths().assumptions().serving()));
            });
        }
        Assumptions assumed = ratings.strengths().assumptions();
        said.add(spreads(assumed));
        said.add(age(ratings, assumed));
        said.add(words.sentence("rating.small-samples", Map.of()));
        return said;
    }

    /** How far players and pairs are taken to differ before any game. */
    public String spreads(Assumptions assumed) {
        return words.sentence(
                "rating.spreads", Map.of("form", plain(assumed.formSpread()), "extra", plain(assumed.extraSpread())));
    }

    private String age(Ratings ratings, Assumptions assumed) {
        if (assumed.drift() > 0) {
            return words.sentence("rating.drifts", Map.of("drift", plain(assumed.drift())));
        }
        OptionalInt halfLife = ratings.evidence().ageing().halfLife();
        return halfLife.isPresent()
                ? words.sentence("rating.half-life", Map.of("days", halfLife.getAsInt()))
                : words.sentence("rating.same-age", Map.of());
    }

    private static String plain(double spread) {
        return String.format(Locale.ROOT, "%.1f", spread);
    }

    private String serving(Format.Kind kind, Estimate worth, ServeRates rates) {
        Format usual = kind == Format.Kind.SIDE_OUT ? Format.sideOut(11) : Format.rally(15);
        return words.sentence(
                "rating.serving-" + kind.code(),
                Map.of(
                        "best",
                        of100(rates, usual, worth.mean()),
                        "low",
                        of100(rates, usual, worth.low()),
                        "high",
                        of100(rates, usual, worth.high())));
    }

    /** A verdict in two or three words, for a table. */
    public String brief(Verdict verdict) {
        return words.sentence("rating.short." + verdict.code(), Map.of());
    }

    /** A strength such as +2.4. */
    public static String figure(double strength) {
        String figure = String.format(Locale.ROOT, "%+.1f", strength);
        return figure.equals("-0.0") ? "+0.0" : figure;
    }

    private static long of100(ServeRates rates, Format format, double worth) {
        return Math.round(100 * RallyModel.serveChance(rates, format, worth));
    }

    private long percent(double edge) {
        return Math.round(100 * RallyModel.rubberChance(ServeRates.USUAL, format, 1, edge));
    }
}
