package tiewright.http.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.OrderOfPlay;
import tiewright.http.answers.PlanAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Progress;
import tiewright.http.pieces.State;
import tiewright.http.views.ActionForm;
import tiewright.http.views.PlanView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.timetable.Plan;
import tiewright.timetable.Planned;
import tiewright.wording.Words;

/** The page of the plan: what is asked, how far the search is, what it found, and how it is published. */
final class PlanScreens {
    private static final int USUAL_BETTER = 60;

    private final Planning planning;

    PlanScreens(Planning planning) {
        this.planning = planning;
    }

    /** What was asked last, or the usual. */
    PlanAsk asked(Visit visit) {
        return planning.plan().map(Planning.Search::asked).orElseGet(() -> PlanAsk.usual(visit.event()));
    }

    /** A plan that can be published: one that keeps everything that must hold. */
    static Optional<Plan> usable(Planned planned) {
        return planned instanceof Planned.Found found ? Optional.of(found.plan()) : Optional.empty();
    }

    Screen plan(Visit visit, Tried tried) {
        Optional<Planning.Search<PlanAsk, Planned>> search = planning.plan();
        boolean running = search.filter(Planning.Search::isRunning).isPresent();
        Optional<PlanView.Found> found = search.flatMap(one -> one.found().map(planned -> found(visit, planned)));
        return Screen.of(
                "plan",
                visit.say("page-plan.make-the-order-of-play"),
                new PlanView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        search.filter(one -> running)
                                .map(one -> progress(visit.words(), one.progress(), PlanPage.HERE + "/stop")),
                        search.filter(Planning.Search::hasFailed).isPresent(),
                        found,
                        running ? List.of() : sections(visit, tried, search),
                        running ? List.of() : pinned(visit)));
    }

    static Progress progress(Words words, Planning.Progress progress, String stop) {
        String line = progress.best()
                .map(best -> words.say(
                        "page-plan.searching",
                        "better",
                        progress.better(),
                        "breaches",
                        Math.toIntExact(best.breaches())))
                .orElseGet(() -> words.say("page-plan.searching-none-yet"));
        return new Progress(
                "search",
                words.say("page-plan.looking-for-a-plan"),
                line,
                Math.min(progress.better(), USUAL_BETTER),
                USUAL_BETTER,
                stop,
                Button.stop(words.say("page-plan.stop-and-keep-the-best")));
    }

    private static PlanView.Found found(Visit visit, Planned planned) {
        PlanWords words = new PlanWords(visit);
        return switch (planned.kind()) {
            case FOUND -> good(visit, words, ((Planned.Found) planned).plan());
            case BROKEN ->
                words.found(
                        new State(Mark.HELD, visit.say("page-plan.the-best-plan-found-breaks")),
                        List.of(),
                        Optional.of(((Planned.Broken) planned).plan()));
            case IMPOSSIBLE -> {
                Planned.Impossible no = (Planned.Impossible) planned;
                String why = no.why().isInput()
                        ? visit.say("page-plan.this-cannot-be-planned")
                        : visit.say("page-plan.impossible-as-it-is");
                yield words.found(new State(Mark.STOP, why), words.impossible(no.why()), no.asIs());
            }
        };
    }

    private static PlanView.Found good(Visit visit, PlanWords words, Plan plan) {
        Optional<Integer> version = visit.event()
                .order()
                .plan()
                .filter(last -> isPublished(visit, plan))
                .map(OrderOfPlay.Plan::version);
        String said = version.map(number -> visit.say("page-plan.published-as", "version", number))
                .orElseGet(() -> visit.say("page-plan.a-plan-that-keeps-everything"));
        return words.found(new State(Mark.KEPT, said), List.of(), Optional.of(plan), version);
    }

    /** What is pinned by hand, each with a press that takes it away. */
    List<ActionForm> pinned(Visit visit) {
        return PinFields.pinned(visit, planning.pins());
    }

    private List<WorkView.Section> sections(
            Visit visit, Tried tried, Optional<Planning.Search<PlanAsk, Planned>> search) {
        List<WorkView.Section> sections = new ArrayList<>();
        search.flatMap(one -> one.found()
                        .flatMap(PlanScreens::usable)
                        .filter(plan -> !isPublished(visit, plan))
                        .map(plan -> publish(visit, tried, one, plan)))
                .ifPresent(sections::add);
        sections.add(WorkView.Section.of(PlanPage.MAKE, search.isEmpty() ? "" : visit.say("page-plan.search-again"))
                .with(new WorkView.WorkForm(
                        PlanPage.MAKE,
                        PlanPage.HERE + "/" + PlanPage.MAKE,
                        asked(visit).fields(Fields.of(PlanPage.MAKE, tried), visit.event()),
                        List.of(
                                search.isEmpty()
                                        ? Button.main(visit.say("page-plan.make-a-plan"))
                                        : Button.other(visit.say("page-plan.make-a-plan"))))));
        sections.add(PinFields.section(visit, tried));
        return sections;
    }

    /** It was published and stands so: no draft any more. */
    private static boolean isPublished(Visit visit, Plan plan) {
        return visit.event().order().plan().isPresent()
                && visit.ask(PlanAnswers::new).isPublished(Publishing.of(plan, "", ""));
    }

    private static List<FormField> toldFields(Visit visit, Tried tried, Plan plan) {
        List<ClubId> earlier = visit.ask(PlanAnswers::new).earlier(Publishing.of(plan, "", ""));
        return earlier.isEmpty()
                ? List.of()
                : List.of(Publishing.told(
                        visit.say("page-plan.told-of-earlier"),
                        visit.say("page-plan.told-of-earlier-hint"),
                        visit.event().clubs().stream()
                                .filter(club -> earlier.contains(club.id()))
                                .toList(),
                        tried));
    }

    private static WorkView.Section publish(
            Visit visit, Tried tried, Planning.Search<PlanAsk, Planned> search, Plan plan) {
        int next = visit.event().order().plans().size() + 1;
        boolean old = search.seen() != visit.event().seq();
        return WorkView.Section.of(PlanPage.PUBLISH, visit.say("page-plan.publish-this-plan"), lines(visit, old))
                .with(new WorkView.WorkForm(
                        PlanPage.PUBLISH,
                        PlanPage.HERE + "/" + PlanPage.PUBLISH,
                        joined(
                                toldFields(visit, tried, plan),
                                asked(visit, search, Fields.of(PlanPage.PUBLISH, tried))),
                        List.of(Button.main(visit.say("page-plan.publish-version", "next", next)))));
    }

    private static String[] lines(Visit visit, boolean old) {
        String press = visit.say("page-plan.one-press-one-notice");
        return old ? new String[] {press, visit.say("page-plan.entered-since")} : new String[] {press};
    }

    private static List<FormField> asked(Visit visit, Planning.Search<PlanAsk, Planned> search, Fields fields) {
        int next = visit.event().order().plans().size() + 1;
        return List.of(
                new HiddenField("search", Integer.toString(search.number())),
                fields.line(
                                "reason",
                                visit.say("page-plan.why-in-one-line"),
                                next == 1 ? visit.say("page-plan.the-order-of-play-of") : "")
                        .withMaxLength(300)
                        .mustBeFilled(),
                fields.line("by", visit.say("page-plan.who-publishes-by-name"), "")
                        .withAutocomplete("name")
                        .withMaxLength(200)
                        .mustBeFilled());
    }

    private static <T> List<T> joined(List<? extends T> first, List<? extends T> second) {
        return Stream.<T>concat(first.stream(), second.stream()).toList();
    }
}
