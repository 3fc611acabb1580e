package tiewright.http.plan;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.Conditions;
import tiewright.event.Court;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.timetable.Pace;
import tiewright.timetable.TimeBudget;
import tiewright.wording.TimetableWords;
import tiewright.wording.Words;

/** Before entries close: does a day of this shape fit? Nothing is kept; the numbers can be tried again and again. */
final class BudgetPage implements Page {
    private static final String HERE = Addresses.BUDGET;
    private static final String FORM = "budget";
    private static final int MOST_CLUBS = 128;
    private static final int MOST_TIES = 200;
    private static final int MOST_COURTS = 64;
    private static final LocalTime USUAL_START = LocalTime.of(9, 0);
    private static final LocalTime USUAL_END = LocalTime.of(18, 0);

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, visit -> visit.show(screen(visit, Tried.NOTHING, List.of())));
        routes.post(Door.OFFICIALS, HERE, BudgetPage::reckon);
    }

    private static void reckon(Visit visit) {
        Form form = visit.form();
        Optional<TimeBudget.Shape> shape = shape(form);
        Pace pace = PlanAsk.pace(form);
        if (!form.isClean() || shape.isEmpty()) {
            visit.refuse(form, tried -> screen(visit, tried, List.of()));
            return;
        }
        Conditions conditions = visit.event().conditions();
        TimeBudget budget = TimeBudget.of(shape.get(), conditions, pace, PlanAsk.seed(form));
        visit.show(screen(visit, Tried.again(form), said(visit, budget, PlanAsk.seed(form))));
    }

    private static Optional<TimeBudget.Shape> shape(Form form) {
        OptionalInt clubs = must(form, "clubs", 2, MOST_CLUBS);
        OptionalInt pools = must(form, "pools", 0, MOST_CLUBS / 2);
        OptionalInt knockout = must(form, "knockout", 0, MOST_TIES);
        OptionalInt courts = must(form, "courts", 1, MOST_COURTS);
        Optional<LocalTime> starts = form.must("starts", form.time("starts"));
        Optional<LocalTime> closes = form.must("closes", form.time("closes"));
        closesAfterwards(form, starts, closes);
        enoughClubs(form, clubs, pools);
        enoughPools(form, clubs, pools);
        somethingToPlay(form, pools, knockout);
        return form.isClean()
                ? Optional.of(new TimeBudget.Shape(
                        clubs.getAsInt(),
                        pools.getAsInt(),
                        knockout.getAsInt(),
                        courts.getAsInt(),
                        starts.orElseThrow(),
                        closes.orElseThrow()))
                : Optional.empty();
    }

    private static void closesAfterwards(Form form, Optional<LocalTime> starts, Optional<LocalTime> closes) {
        if (starts.isPresent() && closes.isPresent() && !closes.get().isAfter(starts.get())) {
            form.fault(Refusal.of("form.closes-first")
                    .with("starts", starts.get())
                    .with("closes", closes.get())
                    .at("closes"));
        }
    }

    private static void enoughClubs(Form form, OptionalInt clubs, OptionalInt pools) {
        if (clubs.isPresent() && pools.isPresent() && pools.getAsInt() > clubs.getAsInt() / 2) {
            form.fault(Refusal.of("form.too-many-pools")
                    .with("clubs", clubs.getAsInt())
                    .with("most", clubs.getAsInt() / 2)
                    .at("pools"));
        }
    }

    private static void enoughPools(Form form, OptionalInt clubs, OptionalInt pools) {
        int most = TimeBudget.MOST_IN_A_POOL;
        if (clubs.isPresent() && pools.orElse(0) > 0 && clubs.getAsInt() > pools.getAsInt() * most) {
            form.fault(Refusal.of("form.too-few-pools")
                    .with("clubs", clubs.getAsInt())
                    .with("most", most)
                    .with("least", (clubs.getAsInt() + most - 1) / most)
                    .at("pools"));
        }
    }

    private static void somethingToPlay(Form form, OptionalInt pools, OptionalInt knockout) {
        if (pools.equals(OptionalInt.of(0)) && knockout.equals(OptionalInt.of(0))) {
            form.fault(Refusal.of("form.nothing-to-play").at("knockout"));
        }
    }

    private static OptionalInt must(Form form, String field, int least, int most) {
        OptionalInt number = PlanAsk.within(form, field, least, most);
        if (number.isEmpty()) {
            form.must(field, Optional.empty());
        }
        return number;
    }

    private static List<String> said(Visit visit, TimeBudget budget, long seed) {
        List<String> lines = new ArrayList<>(new TimetableWords(visit.words()).budget(budget));
        Collections.swap(lines, 0, 1);
        lines.add(visit.say(
                "page-plan.a-rubber-takes-minutes-on",
                "rubberMinutes",
                rounded(budget.rubberMinutes()),
                "rubberSd",
                rounded(budget.rubberSd())));
        lines.add(visit.say("page-plan.seed-the-same-seed-simulates", "seed", seed));
        return lines;
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static Screen screen(Visit visit, Tried tried, List<String> said) {
        List<WorkView.Section> sections = new ArrayList<>();
        if (!said.isEmpty()) {
            sections.add(WorkView.Section.of("answer", said.get(0)).saying(said.subList(1, said.size())));
        }
        sections.add(WorkView.Section.of(FORM, "")
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        fields(visit.event(), Fields.of(FORM, tried)),
                        List.of(Button.main(visit.say("page-plan.does-it-fit"))))));
        return Screen.of(
                "work",
                visit.say("page-plan.does-the-day-fit"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        List.of(visit.say(
                                "page-plan.rubbers-scoring-and-decider-come",
                                "rubbers",
                                visit.event().conditions().rubbers(),
                                "conditions",
                                visit.event().conditions().value(tiewright.conditions.Setting.SCORING))),
                        sections));
    }

    private static List<FormField> fields(VisibleEvent event, Fields fields) {
        List<FormField> all = new ArrayList<>(numbers(event, fields));
        all.addAll(hours(event, fields));
        all.addAll(PlanAsk.paceFields(Words.of(event), fields, Pace.USUAL));
        all.add(fields.line("seed", Words.say(event, "page-plan.seed-of-the-simulated-days"), "1"));
        return all;
    }

    private static List<FormField> numbers(VisibleEvent event, Fields fields) {
        int clubs = event.clubs().size();
        int courts = (int) event.courts().stream().filter(Court::usable).count();
        OptionalInt entered = clubs > 1 ? OptionalInt.of(clubs) : OptionalInt.empty();
        OptionalInt usable = courts > 0 ? OptionalInt.of(courts) : OptionalInt.empty();
        OptionalInt pools = OptionalInt.of(Math.max(1, event.pools().size()));
        int knockout =
                (int) event.ties().stream().filter(tie -> tie.pool().isEmpty()).count();
        return List.of(
                fields.number("clubs", Words.say(event, "page-plan.clubs"), entered)
                        .mustBeFilled(),
                fields.number("pools", Words.say(event, "page-plan.pools-in-which-every-club"), pools)
                        .withHint(Words.say(event, "page-plan.0-for-none"))
                        .mustBeFilled(),
                fields.number(
                                "knockout",
                                Words.say(event, "page-plan.knockout-ties-after-the-pools"),
                                OptionalInt.of(knockout))
                        .withHint(Words.say(event, "page-plan.such-as-4-two-semi"))
                        .mustBeFilled(),
                fields.number("courts", Words.say(event, "page-plan.courts"), usable)
                        .mustBeFilled());
    }

    private static List<FormField> hours(VisibleEvent event, Fields fields) {
        Optional<LocalTime> starts =
                event.about().map(SetUpFact.EventDescribed::starts).or(() -> Optional.of(USUAL_START));
        Optional<LocalTime> closes =
                event.about().flatMap(SetUpFact.EventDescribed::venueCloses).or(() -> Optional.of(USUAL_END));
        return List.of(
                fields.time("starts", Words.say(event, "page-plan.play-starts-at"), starts)
                        .mustBeFilled(),
                fields.time("closes", Words.say(event, "page-plan.the-place-closes-at"), closes)
                        .mustBeFilled());
    }
}
