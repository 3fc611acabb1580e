package tiewright.http.plan;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.ClubId;
import tiewright.event.Refusal;
import tiewright.event.VisibleEvent;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.timetable.Budget;
import tiewright.timetable.Pace;
import tiewright.timetable.PlanAsked;
import tiewright.timetable.Restart;
import tiewright.wording.Words;

/**
 * What broke, and from when on the day is planned anew.
 *
 * @param from play can go on from here, before any warm-up
 * @param stopped when rain or heat stopped play, if it did
 * @param lost courts that cannot be used any more
 * @param club that is late, and when it will be ready
 * @param closes the venue closes then, if that changed
 * @param earlier whether ties may begin before their published starts, to be agreed with their clubs
 */
record BreakAsk(
        What what,
        LocalTime from,
        Optional<LocalTime> stopped,
        List<String> lost,
        Optional<ClubId> club,
        Optional<LocalTime> ready,
        Optional<LocalTime> closes,
        OptionalInt slotMinutes,
        Pace pace,
        long seed,
        boolean earlier) {
    private static final Duration LONGEST_SEARCH = Duration.ofSeconds(5);
    private static final int STEPS = 4_000;

    /** What can break a day. */
    enum What {
        COURT,
        STOP,
        LATE,
        INJURY,
        CLOSING;

        String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<What> parse(String code) {
            return Arrays.stream(values())
                    .filter(what -> what.code().equals(code))
                    .findFirst();
        }
    }

    static BreakAsk read(Form form, VisibleEvent event, LocalTime now) {
        Optional<What> what = form.must("what", What.parse(form.text("what")));
        LocalTime from = form.time("from").orElse(now);
        Optional<LocalTime> stopped = form.time("stopped");
        Optional<LocalTime> ready = form.time("ready");
        Optional<LocalTime> closes = form.time("closes");
        Optional<ClubId> club = form.read("club", "form.not-a-club", ClubId::of)
                .filter(id -> event.club(id).isPresent());
        List<String> lost = lost(form, event);
        BreakAsk asked = new BreakAsk(
                what.orElse(What.INJURY),
                from,
                stopped,
                lost,
                club,
                ready,
                closes,
                PlanAsk.within(form, "slot", 1, 240),
                PlanAsk.pace(form),
                PlanAsk.seed(form),
                form.isTicked(PlanAsk.EARLIER));
        what.ifPresent(which -> asked.check(which, form));
        return asked;
    }

    private static List<String> lost(Form form, VisibleEvent event) {
        return form.texts("lost").stream()
                .filter(name ->
                        event.courts().stream().anyMatch(court -> court.name().equals(name)))
                .toList();
    }

    /** What the kind of break cannot do without. */
    private void check(What which, Form form) {
        switch (which) {
            case COURT -> {
                if (lost.isEmpty()) {
                    form.fault(Refusal.of("form.no-court-lost").at("lost"));
                }
            }
            case STOP -> checkStop(form);
            case LATE -> {
                form.must("club", club);
                form.must("ready", ready);
            }
            case CLOSING -> checkClosing(form);
            case INJURY -> {}
        }
    }

    private void checkStop(Form form) {
        form.must("stopped", stopped);
        stopped.filter(at -> !at.isBefore(from))
                .ifPresent(at -> form.fault(Refusal.of("form.goes-on-before-stop")
                        .with("stopped", at)
                        .with("from", from)
                        .at("from")));
    }

    private void checkClosing(Form form) {
        form.must("closes", closes);
        closes.filter(at -> !at.isAfter(from))
                .ifPresent(at -> form.fault(Refusal.of("form.closes-before")
                        .with("closes", at)
                        .with("from", from)
                        .at("closes")));
    }

    /** Warm-up after the stop, none where nothing stopped. */
    Duration warmUp() {
        return what == What.STOP
                ? stopped.map(at -> Restart.warmUpAfter(Duration.between(at, from)))
                        .orElse(Duration.ZERO)
                : Duration.ZERO;
    }

    /** The first moment that can be planned. */
    LocalTime start() {
        return from.plus(warmUp());
    }

    /** All play stands still, and goes on only later. */
    boolean stops(VisibleEvent event) {
        return what == What.STOP
                && event.about()
                        .filter(about -> event.now().isBefore(about.at(start())))
                        .isPresent();
    }

    PlanAsked asked(int freezeMinutes) {
        PlanAsked asked = PlanAsked.from(start(), freezeMinutes).withPace(pace);
        asked = slotMinutes.isPresent() ? asked.withSlot(slotMinutes.getAsInt()) : asked;
        asked = earlier ? asked.withEarlierStarts() : asked;
        return switch (what) {
            case COURT -> asked.withoutCourts(lost);
            case LATE -> asked.withLateClubs(Map.of(club.orElseThrow(), ready.orElseThrow()));
            case CLOSING -> asked.closingAt(closes.orElseThrow());
            case STOP, INJURY -> asked;
        };
    }

    Budget budget() {
        return Budget.ofSteps(STEPS, seed).within(LONGEST_SEARCH);
    }

    /** Why, as it stands in the notice unless somebody writes something better. */
    String reason(Words words) {
        return switch (what) {
            case COURT -> words.say("page-plan.reason-court", "count", lost.size(), "courts", String.join(", ", lost));
            case STOP ->
                words.say(
                        "page-plan.reason-stop",
                        "stopped",
                        stopped.map(HallClock::said).orElse(""),
                        "from",
                        HallClock.said(from));
            case LATE ->
                words.say(
                        "page-plan.reason-late",
                        "ready",
                        ready.map(HallClock::said).orElse(""));
            case INJURY -> words.say("page-plan.reason-injury", "from", HallClock.said(from));
            case CLOSING ->
                words.say(
                        "page-plan.reason-closing",
                        "closes",
                        closes.map(HallClock::said).orElse(""));
        };
    }
}
