package tiewright.http.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.PlanAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.BreaksView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Fields;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.timetable.Plan;
import tiewright.timetable.ReplanOption;
import tiewright.wording.Words;

/** Ways to go on in words: each in one line, and one in full with its press. */
final class BreakWays {
    private static final int MOST_BREACHES = 4;

    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;
    private final PlanWords plans;

    BreakWays(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
        this.plans = new PlanWords(visit);
    }

    /** @param number of the way among those of the search */
    record Press(Planning.Search<BreakAsk, PlanAnswers.Ways> search, int number, Tried tried) {}

    String title(ReplanOption option) {
        return plans.cut(option.cut());
    }

    /** What was asked, from when on it is planned, and what contradicts itself in it. */
    List<String> verdict(Planning.Search<BreakAsk, PlanAnswers.Ways> search) {
        List<String> lines = new ArrayList<>();
        BreakAsk asked = search.asked();
        lines.add(words.say("page-plan.planned-anew-from", "reason", asked.reason(words), "start", asked.start()));
        if (asked.what() == BreakAsk.What.STOP) {
            long stopped = Duration.between(asked.stopped().orElse(asked.from()), asked.from())
                    .toMinutes();
            lines.add(words.say("page-plan.the-stop-was", "minutes", (int) stopped, "warmUp", (int)
                    asked.warmUp().toMinutes()));
        }
        if (search.seen() != event.seq()) {
            lines.add(words.say("page-plan.something-was-entered-since-this"));
        }
        search.found().flatMap(PlanAnswers.Ways::fault).ifPresent(fault -> lines.addAll(plans.impossible(fault)));
        return lines;
    }

    BreaksView.Line line(ReplanOption option, int number) {
        return new BreaksView.Line(
                title(option),
                Stream.concat(option.fairness().stream().map(plans::said), Stream.of(price(option)))
                        .collect(Collectors.joining(" ")),
                state(option).word(),
                BreaksPage.HERE + "?" + BreakScreens.WAY + "=" + number);
    }

    private State state(ReplanOption option) {
        String finish = HallClock.said(option.finish());
        if (option.isFeasible()) {
            return new State(Mark.KEPT, words.say("page-plan.ends-at", "finish", finish));
        }
        return new State(
                Mark.STOP,
                option.plan().score().breaches() > 0
                        ? words.say("page-plan.breaks-something")
                        : words.say("page-plan.impossible-would-end-at", "finish", finish));
    }

    /** What publishing it truly costs: rubbers, other times and courts, people to tell. */
    private String price(ReplanOption option) {
        var published = Publishing.of(option, "", "");
        PlanAnswers answers = visit.ask(PlanAnswers::new);
        return words.say(
                "page-plan.price",
                "cost",
                rubbers(option.cost()),
                "moved",
                answers.moves(published),
                "people",
                people(answers.concerned(published)));
    }

    /** What else a press does, and that there is none where nothing changes. */
    private List<String> effect(ReplanOption option, BreakAsk asked) {
        List<String> lines = new ArrayList<>();
        boolean stops = asked.stops(event);
        if (stops) {
            lines.add(words.say("page-plan.everybody-reads-the-stop", "until", HallClock.said(asked.start())));
        }
        if (!changes(option)) {
            lines.add(words.say(stops ? "page-plan.no-time-changes" : "page-plan.nothing-changes"));
        }
        return lines;
    }

    /** To the nearest tenth. */
    private static Number rubbers(double cost) {
        long tenths = Math.round(cost * 10);
        return tenths % 10 == 0 ? (Number) (tenths / 10) : (Number) (tenths / 10.0);
    }

    private boolean changes(ReplanOption option) {
        return !visit.ask(PlanAnswers::new).isPublished(Publishing.of(option, "", ""));
    }

    private int people(List<ClubId> clubs) {
        return clubs.stream()
                .mapToInt(club -> Math.max(1, event.squad(club).size()))
                .sum();
    }

    BreaksView.Choice choice(ReplanOption option, Press press) {
        Plan plan = option.plan();
        List<String> lines = new ArrayList<>(List.of(words.say(
                "page-plan.no-plan-of-this-kind",
                "finish",
                HallClock.said(plan.bound().finish()),
                "because",
                plans.said(plan.bound().because()))));
        option.fairness().stream().map(plans::said).forEach(lines::add);
        lines.add(price(option));
        lines.addAll(told(option));
        BreakAsk asked = press.search().asked();
        lines.addAll(effect(option, asked));
        plan.breaches().stream().limit(MOST_BREACHES).map(plans::said).forEach(lines::add);
        return new BreaksView.Choice(
                state(option),
                lines,
                new OldAndNew(visit, plan).picture(),
                plans.chart("chart-of-way", plan),
                plans.table(plan),
                option.isFeasible() && (changes(option) || asked.stops(event))
                        ? Optional.of(publish(option, press))
                        : Optional.empty());
    }

    /** The same clubs that the notice then names, and those that would begin earlier than published. */
    private List<String> told(ReplanOption option) {
        var published = Publishing.of(option, "", "");
        List<ClubId> clubs = visit.ask(PlanAnswers::new).concerned(published);
        List<String> lines = new ArrayList<>(List.of(words.say(
                "page-plan.to-be-told", "people", people(clubs), "clubs", names(clubs), "count", clubs.size())));
        List<ClubId> earlier = visit.ask(PlanAnswers::new).earlier(published);
        if (!earlier.isEmpty()) {
            lines.add(words.say("page-plan.begins-earlier-for", "clubs", names(earlier)));
        }
        return lines;
    }

    private String names(List<ClubId> clubs) {
        return String.join(", ", clubs.stream().map(event::clubName).toList());
    }

    private WorkView.WorkForm publish(ReplanOption option, Press press) {
        BreakAsk asked = press.search().asked();
        List<FormField> all = new ArrayList<>(List.of(
                new HiddenField("search", Integer.toString(press.search().number())),
                new HiddenField(BreaksPage.OPTION, Integer.toString(press.number()))));
        all.addAll(signed(Fields.of(BreaksPage.PUBLISH, press.tried()), asked));
        if (asked.earlier()) {
            all.add(Publishing.told(
                    words.say("page-plan.told-of-earlier"),
                    words.say("page-plan.told-of-earlier-hint"),
                    event.clubs(),
                    press.tried()));
        }
        String root = title(option).toLowerCase(Locale.ROOT);
        return new WorkView.WorkForm(
                BreaksPage.PUBLISH,
                BreaksPage.HERE + "/" + BreaksPage.PUBLISH,
                all,
                List.of(Button.main(
                        changes(option)
                                ? words.say("page-plan.publish-this", "root", root)
                                : words.say("page-plan.say-the-stop"))));
    }

    private List<FormField> signed(Fields fields, BreakAsk asked) {
        return List.of(
                fields.line("reason", words.say("page-plan.why-in-one-line"), asked.reason(words))
                        .withMaxLength(300)
                        .mustBeFilled(),
                fields.line("by", words.say("page-plan.who-publishes-by-name"), "")
                        .withAutocomplete("name")
                        .withMaxLength(200)
                        .mustBeFilled());
    }
}
