package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.SquadView;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.rating.JudgeSquad;
import tiewright.wording.Words;

/** The captain's own view of all players of the squad in one form: what was changed in it is noted, by one press. */
final class SquadRating {
    static final String PATH = "/captain/squad/form";

    private static final int OFFERED = 12;
    private static final double[] DOUBTS = {1, 2, 3, 4, 5, 6, 8, 10};
    private static final int EVEN = 50;

    private SquadRating() {}

    /** Those players whose figures differ from what stood there as the form was made. */
    static JudgeSquad changed(Visit visit, Form form) {
        List<FormJudged> changed = new ArrayList<>();
        for (Player player : visit.event().squad(visit.club())) {
            String code = player.id().code();
            if (!form.wasAsked("form-" + code)) {
                continue;
            }
            OptionalDouble value = figure(form, "form-" + code);
            OptionalDouble doubt = figure(form, "doubt-" + code);
            if (!had(value, doubt).equals(form.text("had-" + code))) {
                changed.add(new FormJudged(player.id(), value, doubt));
            }
        }
        return new JudgeSquad(changed);
    }

    static OptionalDouble figure(Form form, String field) {
        return form.read(
                        field,
                        "form.not-a-figure",
                        text -> Double.valueOf(
                                text.replace(',', '.').replace('−', '-').replace("+", "")))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    static SquadView.Rating view(Visit visit, Map<PlayerId, FormJudged> judged, Tried tried) {
        List<SquadView.Player> players = visit.event().squad(visit.club()).stream()
                .map(player -> player(visit, player, Optional.ofNullable(judged.get(player.id())), tried))
                .toList();
        long rated =
                players.stream().filter(player -> !player.judged().isEmpty()).count();
        return new SquadView.Rating(
                PATH,
                visit.words().say("page-captain.rated", "rated", rated, "of", players.size()),
                players,
                Button.main(visit.words().say("page-captain.keep-view")));
    }

    private static SquadView.Player player(Visit visit, Player player, Optional<FormJudged> judged, Tried tried) {
        Words words = visit.words();
        String code = player.id().code();
        String name = visit.event().name(player.id());
        OptionalDouble form = judged.map(FormJudged::form).orElse(OptionalDouble.empty());
        OptionalDouble doubt = judged.map(FormJudged::sd).orElse(OptionalDouble.empty());
        return new SquadView.Player(
                code,
                name,
                forms(words, name, "form-" + code, tried.value("form-" + code, written(form)))
                        .withError(tried.error("form-" + code)),
                doubts(words, name, "doubt-" + code, tried.value("doubt-" + code, written(doubt)))
                        .withError(tried.error("doubt-" + code)),
                had(form, doubt),
                form.isPresent() ? signed(form.getAsDouble()) : "");
    }

    private static SelectField forms(Words words, String name, String field, String chosen) {
        return SelectField.of(
                field,
                words.say("page-captain.form-of", "name", name),
                words.say("page-captain.no-view"),
                options(
                        IntStream.rangeClosed(-OFFERED, OFFERED).mapToDouble(value -> -value),
                        chosen,
                        value -> words.say(
                                "page-captain.form-option", "form", signed(value), "wins", plain(EVEN + value))));
    }

    private static SelectField doubts(Words words, String name, String field, String chosen) {
        return SelectField.of(
                field,
                words.say("page-captain.doubt-of", "name", name),
                words.say("page-captain.usual-doubt"),
                options(
                        DoubleStream.of(DOUBTS),
                        chosen,
                        value -> words.say("page-captain.doubt-option", "doubt", plain(value))));
    }

    /** What is offered, and what was chosen or typed before should it not be among them. */
    private static List<Option> options(DoubleStream offered, String chosen, Function<Double, String> said) {
        List<String> values = offered.mapToObj(SquadRating::plain).toList();
        boolean other = !chosen.isEmpty() && !values.contains(plain(chosen));
        return Stream.concat(other ? Stream.of(chosen) : Stream.empty(), values.stream())
                .map(value -> Option.of(
                        value,
                        isFigure(value) ? said.apply(Double.valueOf(value)) : value,
                        plain(value).equals(plain(chosen))))
                .toList();
    }

    private static boolean isFigure(String text) {
        return text.matches("-?[0-9]+(\\.[0-9]+)?");
    }

    private static String plain(String typed) {
        String figure = typed.replace(',', '.').replace('−', '-').replace("+", "");
        return isFigure(figure) ? plain(Double.parseDouble(figure)) : typed;
    }

    private static String had(OptionalDouble form, OptionalDouble doubt) {
        return written(form) + "/" + written(doubt);
    }

    private static String written(OptionalDouble value) {
        return value.isPresent() ? plain(value.getAsDouble()) : "";
    }

    static String signed(double value) {
        return (value > 0 ? "+" : "") + plain(value).replace('-', '−');
    }

    static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }
}
