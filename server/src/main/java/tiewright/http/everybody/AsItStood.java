package tiewright.http.everybody;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.http.views.StoodView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Visit;

/** A page as it stood at an earlier minute of the day: {@code ?at=14:31} in its address. */
record AsItStood(Visit visit, StoodView view) {
    private static final String FIELD = "at";

    /** The visit to show: the present one without a time, or with one that is no time or still ahead. */
    static AsItStood of(Visit visit) {
        String typed =
                Optional.ofNullable(visit.ctx().queryParam(FIELD)).orElse("").strip();
        String path = visit.ctx().path();
        if (typed.isEmpty()) {
            return new AsItStood(visit, new StoodView(path, "", "", ""));
        }
        try {
            return at(visit, typed, LocalTime.parse(typed));
        } catch (DateTimeParseException noTime) {
            String shown = typed.substring(0, Math.min(typed.length(), 20));
            return new AsItStood(
                    visit, new StoodView(path, "", "", visit.say("page-everybody.is-no-time-of-day", "shown", shown)));
        }
    }

    private static AsItStood at(Visit visit, String typed, LocalTime time) {
        String path = visit.ctx().path();
        Instant moment = endOf(visit.event(), time);
        String said = HallClock.said(time);
        return moment.isAfter(visit.event().now())
                ? new AsItStood(
                        visit,
                        new StoodView(
                                path, typed, "", visit.say("page-everybody.is-still-ahead-this-is", "time", said)))
                : new AsItStood(
                        visit.asOf(moment),
                        new StoodView(path, said, visit.say("page-everybody.as-it-stood-at", "time", said), ""));
    }

    /** The last moment of that minute on the day of the event. */
    private static Instant endOf(VisibleEvent event, LocalTime time) {
        LocalDate day = event.about()
                .map(SetUpFact.EventDescribed::date)
                .orElse(LocalDate.ofInstant(event.now(), event.zone()));
        Instant minute = day.atTime(LocalTime.of(time.getHour(), time.getMinute()))
                .atZone(event.zone())
                .toInstant();
        Instant end = minute.plus(Duration.ofMinutes(1)).minusNanos(1);
        Instant now = event.now();
        return end.isAfter(now) && !minute.isAfter(now) ? now : end;
    }
}
