package tiewright.rating;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;
import tiewright.scoring.GameState;
import tiewright.scoring.SideNo;

/** Players whose true strengths are known because they were thrown by dice, and the games they play by dice. */
final class World {
    static final LocalDate DAY = LocalDate.of(2026, 11, 28);

    private final Random random;
    private final Map<PlayerId, Double> forms = new HashMap<>();
    private final Map<Pair, Double> extras = new HashMap<>();
    private final Map<Format.Kind, Double> serves = new EnumMap<>(Format.Kind.class);
    private final List<PastGame> games = new ArrayList<>();
    private final List<FilmedGame> films = new ArrayList<>();

    World(Random random) {
        this.random = random;
    }

    /** A world in which everybody and every pair is even. */
    static World even(Random random, List<List<PlayerId>> clubs) {
        World world = new World(random);
        for (List<PlayerId> club : clubs) {
            club.forEach(player -> world.forms.put(player, 0.0));
            pairs(club).forEach(pair -> world.extras.put(pair, 0.0));
        }
        world.serves.put(Format.Kind.SIDE_OUT, 0.0);
        world.serves.put(Format.Kind.RALLY, 0.0);
        return world;
    }

    /** A world thrown from the prior. */
    static World from(Prior prior, Random random, List<List<PlayerId>> clubs) {
        World world = even(random, clubs);
        world.forms.replaceAll((player, none) -> world.thrown(prior.form(player, 6)));
        world.extras.replaceAll((pair, none) -> world.thrown(prior.extra(pair, 3)));
        world.serves.replaceAll((kind, none) -> world.thrown(Prior.SERVE));
        return world;
    }

    private double thrown(Estimate estimate) {
        return estimate.mean() + estimate.sd() * random.nextGaussian();
    }

    static List<PlayerId> club(String name, int players) {
        List<PlayerId> club = new ArrayList<>();
        for (int i = 1; i <= players; i++) {
            club.add(PlayerId.of(name + i));
        }
        return club;
    }

    static List<Pair> pairs(List<PlayerId> club) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < club.size(); i++) {
            for (int j = i + 1; j < club.size(); j++) {
                pairs.add(Pair.of(club.get(i), club.get(j)));
            }
        }
        return pairs;
    }

    Pair anyPair(List<PlayerId> club) {
        int one = random.nextInt(club.size());
        int other = (one + 1 + random.nextInt(club.size() - 1)) % club.size();
        return Pair.of(club.get(one), club.get(other));
    }

    World plant(Pair pair, double extra) {
        extras.put(pair, extra);
        return this;
    }

    double form(PlayerId player) {
        return forms.get(player);
    }

    double extra(Pair pair) {
        return extras.get(pair);
    }

    double serve(Format.Kind kind) {
        return serves.get(kind);
    }

    double rating(Pair pair) {
        return (form(pair.first()) + form(pair.second())) / 2 + extra(pair);
    }

    /** Chance that the first pair wins a rally that it serves. */
    private double chance(Format format, Pair serving, Pair receiving) {
        double logit = RallyModel.serveLogit(ServeRates.PLAIN, format)
                + RallyModel.LOGIT_PER_RALLY * (rating(serving) - rating(receiving) + serve(format.kind()));
        return 1 / (1 + Math.exp(-logit));
    }

    /** A whole game rally by rally. */
    World play(Format format, Pair one, Pair two, boolean filmed) {
        SideNo first = random.nextBoolean() ? SideNo.ONE : SideNo.TWO;
        GameState state = GameState.start(format, first);
        FilmedGame.Served byOne = FilmedGame.Served.NONE;
        FilmedGame.Served byTwo = FilmedGame.Served.NONE;
        while (!state.isOver()) {
            boolean oneServes = state.serving() == SideNo.ONE;
            double chance = oneServes ? chance(format, one, two) : chance(format, two, one);
            SideNo winner = random.nextDouble() < chance
                    ? state.serving()
                    : state.serving().other();
            byOne = oneServes ? byOne.and(winner == SideNo.ONE) : byOne;
            byTwo = oneServes ? byTwo : byTwo.and(winner == SideNo.TWO);
            state = state.after(winner);
        }
        if (filmed) {
            films.add(new FilmedGame(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    format,
                    one,
                    two,
                    Optional.of(state.score()),
                    byOne,
                    byTwo));
        } else {
            games.add(new PastGame(DAY, one, two, state.score(), format));
        }
        return this;
    }

    /** A whole game of which only the score is kept, unless the two pairs share a player. */
    World meet(Format format, Pair one, Pair two) {
        boolean apart = !one.has(two.first()) && !one.has(two.second());
        return apart ? play(format, one, two, false) : this;
    }

    /** So many rallies on film, half of them served by each side. */
    World film(Format format, Pair one, Pair two, int rallies) {
        films.add(new FilmedGame(
                Optional.empty(),
                Optional.empty(),
                Optional.of(DAY),
                format,
                one,
                two,
                Optional.empty(),
                served(rallies / 2, chance(format, one, two)),
                served(rallies - rallies / 2, chance(format, two, one))));
        return this;
    }

    private FilmedGame.Served served(int rallies, double chance) {
        int won = 0;
        for (int i = 0; i < rallies; i++) {
            won += random.nextDouble() < chance ? 1 : 0;
        }
        return new FilmedGame.Served(rallies, won);
    }

    Evidence evidence() {
        return new Evidence(games, films, Ageing.none());
    }
}
