package tiewright.http.captain;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.TieId;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Visit;
import tiewright.lineup.Aim;
import tiewright.lineup.Budget;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.club.LineupInputs;
import tiewright.wording.Words;

/**
 * What the captain asks of a proposal, as it stands in the address. What is not understood counts as not asked.
 *
 * @param seed which draw, from 1; what is drawn comes from a secret of the club, so the number tells nobody anything
 */
record Question(LineupProblem.Against against, Aim.Kind aim, int floor, boolean learning, boolean tired, long seed) {
    private static final int MOST_PROMISED = 5;

    static Question of(Visit visit) {
        return new Question(
                text(visit, "against").equals("straight")
                        ? LineupProblem.Against.STRAIGHT
                        : LineupProblem.Against.UNKNOWN,
                Aim.Kind.parse(text(visit, "aim")).orElse(Aim.Kind.WIN),
                text(visit, "floor").matches("[1-" + MOST_PROMISED + "]") ? Integer.parseInt(text(visit, "floor")) : 0,
                text(visit, "learn").equals("yes"),
                !text(visit, "tired").equals("no"),
                seed(text(visit, "seed")));
    }

    private static String text(Visit visit, String name) {
        return Optional.ofNullable(visit.ctx().queryParam(name)).orElse("");
    }

    private static long seed(String asked) {
        return asked.isEmpty() ? 1 : asked.matches("[0-9]{1,15}") ? Long.parseLong(asked) : asked.hashCode();
    }

    /** What is by lot comes from the club's secret; the same wherever the question is asked. */
    Budget budget(Visit visit, TieId tie) {
        return Budget.usual(visit.ask(ClubAnswers::new).chance(tie, seed));
    }

    LineupInputs inputs(Visit visit, TieId tie) {
        LineupInputs plain =
                visit.ask(ClubAnswers::new).lineup(tie, against, seed).promising(floor);
        return plain.asking(problem -> {
            LineupProblem fresh = tired
                    ? problem
                    : problem.after(new Freshness(problem.freshness().loads(), Freshness.Cost.NONE));
            LineupProblem aimed = fresh.aimingAt(visit.ask(ClubAnswers::new).aim(tie, aim, seed));
            return learning ? aimed.learning() : aimed;
        });
    }

    /** This draw, and the address of another one of the same question. */
    private ProposalView.Draw draw(Visit visit) {
        StringBuilder query = new StringBuilder("?seed=" + (seed + 1));
        for (String name : List.of("against", "aim", "floor", "learn", "tired")) {
            String typed = text(visit, name);
            if (typed.matches("[a-z0-9]+")) {
                query.append('&').append(name).append('=').append(typed);
            }
        }
        return new ProposalView.Draw(Long.toString(seed), query.toString());
    }

    ProposalView.Ask ask(Visit visit, TieId tie) {
        Words words = visit.words();
        return new ProposalView.Ask(
                "/captain/proposal/" + tie,
                words.say(
                        "page-captain.asked",
                        "aim",
                        words.say("page-captain.aim-" + aim.code()),
                        "order",
                        words.say("page-captain.order-" + order()),
                        "rest",
                        words.say(tired ? "page-captain.rest-counts" : "page-captain.rest-does-not")),
                Stream.of(expected(words), minded(words)).flatMap(List::stream).toList(),
                draw(visit));
    }

    private List<SelectField> expected(Words words) {
        return List.of(
                SelectField.of(
                        "aim",
                        words.say("page-captain.what-this-tie-is-for"),
                        "",
                        Stream.of(Aim.Kind.values())
                                .map(kind -> Option.of(
                                        kind.code(), words.say("page-captain.aim-" + kind.code()), aim == kind))
                                .toList()),
                SelectField.of(
                        "against",
                        words.say("page-captain.what-you-expect"),
                        "",
                        Stream.of("unknown", "straight")
                                .map(code ->
                                        Option.of(code, words.say("page-captain.order-" + code), order().equals(code)))
                                .toList()));
    }

    private List<SelectField> minded(Words words) {
        return List.of(
                SelectField.of(
                        "floor",
                        words.say("page-captain.rubbers-for-everybody"),
                        words.say("page-captain.none-promised"),
                        IntStream.rangeClosed(1, MOST_PROMISED)
                                .mapToObj(count ->
                                        Option.of(Integer.toString(count), Integer.toString(count), count == floor))
                                .toList()),
                SelectField.of(
                        "learn",
                        words.say("page-captain.among-equal-sheets"),
                        words.say("page-captain.no-matter-which"),
                        List.of(Option.of("yes", words.say("page-captain.teaches-most"), learning))),
                SelectField.of(
                        "tired",
                        words.say("page-captain.rest-since"),
                        "",
                        List.of(
                                Option.of("yes", words.say("page-captain.rest-counts"), tired),
                                Option.of("no", words.say("page-captain.rest-does-not"), !tired))));
    }

    private String order() {
        return against == LineupProblem.Against.STRAIGHT ? "straight" : "unknown";
    }
}
