package tiewright.http.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.desk.PublishPlan;
import tiewright.event.ClubId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.PlanAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.BreaksView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Fields;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.timetable.Plan;
import tiewright.timetable.ReplanOption;

/** The page of the broken day: the question, then the ways to go on beside each other. */
final class BreakScreens {
    private final Planning planning;

    BreakScreens(Planning planning) {
        this.planning = planning;
    }

    Screen screen(Visit visit, Tried tried) {
        Optional<Planning.Search<BreakAsk, PlanAnswers.Ways>> search = planning.replan();
        boolean running = search.filter(Planning.Search::isRunning).isPresent();
        Optional<List<ReplanOption>> options =
                search.flatMap(Planning.Search::found).map(PlanAnswers.Ways::options);
        return Screen.of(
                "breaks",
                visit.words().say("page-plan.the-day-breaks"),
                new BreaksView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        search.filter(one -> running)
                                .map(one -> PlanScreens.progress(one.progress(), BreaksPage.HERE + "/stop")),
                        search.filter(Planning.Search::hasFailed).isPresent(),
                        search.filter(one -> options.isPresent())
                                .map(one -> verdict(visit, one))
                                .orElse(List.of()),
                        options.map(all -> options(visit, all)).orElse(List.of()),
                        search.filter(one -> options.isPresent())
                                .map(one -> Integer.toString(one.number()))
                                .orElse(""),
                        search.map(one -> publishFields(visit, tried, one.asked()))
                                .orElse(List.of()),
                        running ? Optional.empty() : Optional.of(look(visit, tried, search))));
    }

    private static WorkView.WorkForm look(
            Visit visit, Tried tried, Optional<Planning.Search<BreakAsk, PlanAnswers.Ways>> search) {
        Tried own = tried.typed().text(Fields.FORM).equals(BreaksPage.LOOK) ? tried : Tried.NOTHING;
        return new WorkView.WorkForm(
                BreaksPage.LOOK,
                BreaksPage.HERE + "/" + BreaksPage.LOOK,
                BreakAsk.fields(
                        Fields.of(BreaksPage.LOOK, tried), own, visit.event(), search.map(Planning.Search::asked)),
                List.of(
                        search.isEmpty()
                                ? Button.main(visit.words().say("page-plan.what-can-be-done"))
                                : Button.other(visit.words().say("page-plan.what-can-be-done"))));
    }

    private static List<FormField> publishFields(Visit visit, Tried tried, BreakAsk asked) {
        Fields fields = Fields.of(BreaksPage.PUBLISH, tried);
        List<FormField> all = new ArrayList<>(List.of(
                fields.line("reason", "Why, in one line", asked.reason())
                        .withMaxLength(300)
                        .mustBeFilled(),
                fields.line("by", "Who publishes, by name", "")
                        .withAutocomplete("name")
                        .withMaxLength(200)
                        .mustBeFilled()));
        if (asked.earlier()) {
            all.add(Publishing.told(
                    visit.words().say("page-plan.told-of-earlier"),
                    visit.words().say("page-plan.told-of-earlier-hint"),
                    visit.event().clubs(),
                    tried));
        }
        return all;
    }

    private static List<String> verdict(Visit visit, Planning.Search<BreakAsk, PlanAnswers.Ways> search) {
        List<String> lines = new ArrayList<>();
        BreakAsk asked = search.asked();
        lines.add(visit.words()
                .say("page-plan.planned-anew-from", "reason", asked.reason(), "start", HallClock.said(asked.start())));
        if (asked.what() == BreakAsk.What.STOP) {
            Duration warmUp = asked.warmUp();
            lines.add("The stop was "
                    + Duration.between(asked.stopped().orElse(asked.from()), asked.from())
                            .toMinutes() + " minutes: "
                    + (warmUp.isZero()
                            ? "no warm-up under that rule."
                            : "a warm-up of " + warmUp.toMinutes() + " minutes is counted in."));
        }
        if (search.seen() != visit.event().seq()) {
            lines.add(visit.words().say("page-plan.something-was-entered-since-this"));
        }
        search.found()
                .flatMap(PlanAnswers.Ways::fault)
                .ifPresent(fault -> lines.addAll(new PlanWords(visit).impossible(fault)));
        return lines;
    }

    /** The same clubs that the notice then names. */
    private static String toldOf(Visit visit, List<ClubId> clubs) {
        VisibleEvent event = visit.event();
        int people = clubs.stream()
                .mapToInt(club -> Math.max(1, event.squad(club).size()))
                .sum();
        return visit.words()
                .say(
                        "page-plan.to-be-told",
                        "people",
                        people,
                        "clubs",
                        String.join(", ", clubs.stream().map(event::clubName).toList()),
                        "count",
                        clubs.size());
    }

    private static List<BreaksView.Choice> options(Visit visit, List<ReplanOption> options) {
        List<BreaksView.Choice> choices = new ArrayList<>();
        for (int i = 0; i < options.size(); i++) {
            choices.add(choice(visit, options.get(i), i));
        }
        return choices;
    }

    private static BreaksView.Choice choice(Visit visit, ReplanOption option, int number) {
        VisibleEvent event = visit.event();
        PlanWords words = new PlanWords(visit);
        Plan plan = option.plan();
        String title = words.cut(option.cut());
        State state = option.isFeasible()
                ? new State(
                        Mark.KEPT, visit.words().say("page-plan.ends-at", "finish", HallClock.said(option.finish())))
                : new State(
                        Mark.STOP,
                        plan.score().breaches() > 0
                                ? visit.words().say("page-plan.breaks-something")
                                : visit.words()
                                        .say(
                                                "page-plan.impossible-would-end-at",
                                                "finish",
                                                HallClock.said(option.finish())));
        List<String> lines = new ArrayList<>();
        lines.add(visit.words()
                .say(
                        "page-plan.no-plan-of-this-kind",
                        "finish",
                        HallClock.said(plan.bound().finish()),
                        "because",
                        words.said(plan.bound().because())));
        option.fairness().stream().map(words::said).forEach(lines::add);
        lines.add(
                visit.words().say("page-plan.price-in-rubbers-lost-or", "cost", Math.round(option.cost() * 10) / 10.0));
        PublishPlan published = Publishing.of(option, "", "");
        lines.add(toldOf(visit, visit.ask(PlanAnswers::new).concerned(published)));
        List<String> earlier = visit.ask(PlanAnswers::new).earlier(published).stream()
                .map(event::clubName)
                .toList();
        if (!earlier.isEmpty()) {
            lines.add(visit.words().say("page-plan.begins-earlier-for", "clubs", String.join(", ", earlier)));
        }
        plan.breaches().stream().limit(4).map(words::said).forEach(lines::add);
        return new BreaksView.Choice(
                "option-" + number,
                title,
                state,
                lines,
                words.chart("chart-" + number, plan),
                option.isFeasible()
                        ? Optional.of(Button.other(visit.words()
                                        .say(
                                                "page-plan.publish-this",
                                                "root",
                                                title.toLowerCase(java.util.Locale.ROOT)))
                                .sending("option", Integer.toString(number)))
                        : Optional.empty());
    }
}
