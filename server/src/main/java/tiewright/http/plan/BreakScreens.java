package tiewright.http.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import tiewright.http.answers.PlanAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Progress;
import tiewright.http.views.BreaksView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Form;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.timetable.ReplanOption;

/** The four screens of something that went wrong. Nothing happens before the press on the last. */
final class BreakScreens {
    static final String WHAT = "what";
    static final String WAY = "way";

    private final Planning planning;
    private final Visit visit;
    private final Tried tried;

    BreakScreens(Planning planning, Visit visit, Tried tried) {
        this.planning = planning;
        this.visit = visit;
        this.tried = tried;
    }

    /** The screen for what was asked in the address, or for the form that was refused. */
    Screen screen() {
        Form asked = tried.isNothing() ? Form.ofQuery(visit.ctx()) : tried.typed();
        Optional<BreakAsk.What> what = BreakAsk.What.parse(asked.text(WHAT));
        OptionalInt way = asked.number(tried.isNothing() ? WAY : BreaksPage.OPTION);
        List<ReplanOption> options = options();
        if (what.isPresent()) {
            return particulars(what.get());
        }
        if (way.isPresent() && way.getAsInt() >= 0 && way.getAsInt() < options.size()) {
            return way(options.get(way.getAsInt()), way.getAsInt());
        }
        return planning.replan().isEmpty() || asked.wasAsked(WHAT) ? kinds() : ways(options);
    }

    private List<ReplanOption> options() {
        return planning.replan()
                .flatMap(Planning.Search::found)
                .map(PlanAnswers.Ways::options)
                .orElse(List.of());
    }

    private Screen kinds() {
        List<BreaksView.Line> kinds = new ArrayList<>(List.of(new BreaksView.Line(
                say("page-plan.what.hurt"), say("page-plan.what.hurt.first"), say("page-plan.go"), "/hurt")));
        Arrays.stream(BreakAsk.What.values())
                .map(what -> new BreaksView.Line(
                        say("page-plan.what." + what.code()),
                        "",
                        say("page-plan.go"),
                        BreaksPage.HERE + "?" + WHAT + "=" + what.code()))
                .forEach(kinds::add);
        return screen("page-plan.the-day-breaks", 1, BackLinks.home(visit), new Parts().lines(kinds));
    }

    private Screen particulars(BreakAsk.What what) {
        BreakFields fields =
                new BreakFields(visit.event(), tried, what, BreakFields.Before.of(planning, visit.event()));
        WorkView.WorkForm form = new WorkView.WorkForm(
                BreaksPage.LOOK,
                BreaksPage.HERE + "/" + BreaksPage.LOOK,
                fields.asked(),
                List.of(Button.main(say("page-plan.what-can-be-done"))));
        return screen(
                "page-plan.what." + what.code(),
                2,
                toKinds(),
                new Parts().asked(new BreaksView.Asked(form, fields.more())));
    }

    private Screen ways(List<ReplanOption> options) {
        Planning.Search<BreakAsk, PlanAnswers.Ways> search = planning.replan().orElseThrow();
        Optional<Progress> running = search.isRunning()
                ? Optional.of(PlanScreens.progress(visit.words(), search.progress(), BreaksPage.HERE + "/stop"))
                : Optional.empty();
        BreakWays words = new BreakWays(visit);
        List<String> verdict = new ArrayList<>(running.isPresent() ? List.of() : words.verdict(search));
        if (search.hasFailed()) {
            verdict.add(say("page-plan.search-broke-off"));
        }
        return screen(
                "page-plan.ways",
                3,
                toKinds(),
                new Parts()
                        .progress(running)
                        .verdict(verdict)
                        .lines(IntStream.range(0, options.size())
                                .mapToObj(number -> words.line(options.get(number), number))
                                .toList()));
    }

    private Screen way(ReplanOption option, int number) {
        Planning.Search<BreakAsk, PlanAnswers.Ways> search = planning.replan().orElseThrow();
        BreakWays words = new BreakWays(visit);
        return Screen.of(
                "breaks",
                words.title(option),
                view(
                        4,
                        new NavLink(BreaksPage.HERE, say("page-plan.back-to-the-ways"), false),
                        new Parts()
                                .verdict(words.verdict(search))
                                .chosen(words.choice(option, new BreakWays.Press(search, number, tried)))));
    }

    private NavLink toKinds() {
        return new NavLink(BreaksPage.HERE + "?" + WHAT + "=", say("page-plan.something-else"), false);
    }

    private Screen screen(String title, int step, NavLink back, Parts parts) {
        return Screen.of("breaks", say(title), view(step, back, parts));
    }

    private BreaksView view(int step, NavLink back, Parts parts) {
        return new BreaksView(
                tried.refusal(),
                new BreaksView.Step(back, say("page-plan.step", "step", step, "of", 4)),
                parts.progress,
                parts.verdict,
                parts.lines,
                parts.asked,
                parts.chosen);
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }

    /** What one screen shows of them all. */
    private static final class Parts {
        private Optional<Progress> progress = Optional.empty();
        private List<String> verdict = List.of();
        private List<BreaksView.Line> lines = List.of();
        private Optional<BreaksView.Asked> asked = Optional.empty();
        private Optional<BreaksView.Choice> chosen = Optional.empty();

        Parts progress(Optional<Progress> shown) {
            progress = shown;
            return this;
        }

        Parts verdict(List<String> shown) {
            verdict = shown;
            return this;
        }

        Parts lines(List<BreaksView.Line> shown) {
            lines = shown;
            return this;
        }

        Parts asked(BreaksView.Asked shown) {
            asked = Optional.of(shown);
            return this;
        }

        Parts chosen(BreaksView.Choice shown) {
            chosen = Optional.of(shown);
            return this;
        }
    }
}
