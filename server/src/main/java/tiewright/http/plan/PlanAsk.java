package tiewright.http.plan;

import java.time.Duration;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Refusal;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.TextField;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.timetable.Budget;
import tiewright.timetable.Pace;
import tiewright.timetable.Pin;
import tiewright.timetable.PlanAsked;
import tiewright.wording.Words;

/**
 * What an organiser asks of a plan.
 *
 * @param from the first moment to plan; empty = the start of the event
 * @param slotMinutes empty = as the conditions and the pace give
 * @param seconds that the search may take
 * @param earlier whether ties may begin before their published starts, to be agreed with their clubs
 */
record PlanAsk(
        Optional<LocalTime> from,
        OptionalInt slotMinutes,
        Pace pace,
        OptionalInt courtsPerTie,
        boolean umpires,
        long seed,
        int seconds,
        boolean earlier) {
    static final String EARLIER = "earlier";
    static final PlanAsk USUAL =
            new PlanAsk(Optional.empty(), OptionalInt.empty(), Pace.USUAL, OptionalInt.empty(), false, 1, 20, false);
    private static final int MOST_SECONDS = 120;

    /** Once the day has begun, what is left from now on. */
    static PlanAsk usual(VisibleEvent event) {
        return event.ties().stream().anyMatch(Tie::isInPlay)
                ? new PlanAsk(
                        Optional.of(event.clock(event.now()).truncatedTo(ChronoUnit.MINUTES)),
                        USUAL.slotMinutes,
                        USUAL.pace,
                        USUAL.courtsPerTie,
                        USUAL.umpires,
                        USUAL.seed,
                        USUAL.seconds,
                        USUAL.earlier)
                : USUAL;
    }

    static PlanAsk read(Form form) {
        OptionalInt slot = within(form, "slot", 1, 240);
        OptionalInt courts = within(form, "courts-per-tie", 1, 12);
        OptionalInt seconds = within(form, "seconds", 1, MOST_SECONDS);
        return new PlanAsk(
                form.time("from"),
                slot,
                pace(form),
                courts,
                form.isTicked("umpires"),
                seed(form),
                seconds.orElse(USUAL.seconds()),
                form.isTicked(EARLIER));
    }

    static Pace pace(Form form) {
        Optional<Double> rally =
                form.read("rally-seconds", "form.not-a-figure", text -> Double.valueOf(text.replace(',', '.')));
        rally.filter(value -> !(value >= 1 && value <= 300))
                .ifPresent(value -> form.fault(Refusal.of("form.out-of-range")
                        .with("least", 1)
                        .with("most", 300)
                        .at("rally-seconds")));
        OptionalInt turnover = within(form, "turnover", 0, 120);
        boolean fits = rally.filter(value -> value >= 1 && value <= 300).isPresent();
        return new Pace(
                fits ? rally.get() : Pace.USUAL.secondsPerRally(), turnover.orElse(Pace.USUAL.turnoverMinutes()));
    }

    /** A number, or any words: the same words give the same search. */
    static long seed(Form form) {
        String typed = form.text("seed");
        return typed.isEmpty() ? USUAL.seed() : typed.matches("-?\\d{1,18}") ? Long.parseLong(typed) : typed.hashCode();
    }

    static OptionalInt within(Form form, String field, int least, int most) {
        OptionalInt number = form.number(field);
        if (number.isPresent() && (number.getAsInt() < least || number.getAsInt() > most)) {
            form.fault(Refusal.of("form.out-of-range")
                    .with("least", least)
                    .with("most", most)
                    .at(field));
            return OptionalInt.empty();
        }
        return number;
    }

    Budget budget() {
        return Budget.usual(seed).within(Duration.ofSeconds(seconds));
    }

    PlanAsked asked(int freezeMinutes, List<Pin> pins) {
        PlanAsked asked = from.map(start -> PlanAsked.from(start, freezeMinutes))
                .orElseGet(PlanAsked::wholeDay)
                .withPace(pace)
                .withPins(pins);
        asked = slotMinutes.isPresent() ? asked.withSlot(slotMinutes.getAsInt()) : asked;
        asked = courtsPerTie.isPresent() ? asked.withCourtsPerTie(courtsPerTie.getAsInt()) : asked;
        asked = earlier ? asked.withEarlierStarts() : asked;
        return umpires ? asked.withUmpires() : asked;
    }

    static FormField earlierField(Fields fields, VisibleEvent event, boolean ticked) {
        return fields.tick(
                EARLIER,
                Words.say(event, "page-plan.published-starts"),
                Words.say(event, "page-plan.may-begin-earlier"),
                ticked);
    }

    List<FormField> fields(Fields fields, VisibleEvent event) {
        Words words = Words.of(event);
        List<FormField> all = new ArrayList<>();
        all.add(fields.time("from", words.say("page-plan.plan-from"), from)
                .withHint(words.say("page-plan.plan-from-hint")));
        all.addAll(paceFields(words, fields, pace));
        all.add(fields.number("slot", words.say("page-plan.minutes-from-one-rubber-to"), slotMinutes)
                .withHint(words.say("page-plan.empty-play-by-the-conditions")));
        all.add(fields.number("courts-per-tie", words.say("page-plan.courts-per-tie"), courtsPerTie)
                .withHint(words.say("page-plan.courts-per-tie-hint")));
        all.add(fields.tick(
                "umpires", words.say("page-plan.umpires-ask"), words.say("page-plan.umpires-tick"), umpires));
        all.add(earlierField(fields, event, earlier));
        all.add(fields.text(
                        "seed", TextField.Kind.LINE, words.say("page-plan.seed-a-number-or-any"), Long.toString(seed))
                .withHint(words.say("page-plan.search-number-hint")));
        all.add(fields.number("seconds", words.say("page-plan.seconds-of-search"), OptionalInt.of(seconds)));
        return all;
    }

    static List<FormField> paceFields(Words words, Fields fields, Pace pace) {
        String rally = pace.secondsPerRally() == Math.rint(pace.secondsPerRally())
                ? Long.toString(Math.round(pace.secondsPerRally()))
                : Double.toString(pace.secondsPerRally());
        return List.of(
                fields.text(
                                "rally-seconds",
                                TextField.Kind.SHORT,
                                words.say("page-plan.seconds-from-serve-to-serve"),
                                rally)
                        .withHint(words.say("page-plan.pace-source")),
                fields.number(
                                "turnover",
                                words.say("page-plan.minutes-between-rubbers"),
                                OptionalInt.of(pace.turnoverMinutes()))
                        .withHint(words.say("page-plan.turnover-source")));
    }
}
