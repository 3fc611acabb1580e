package tiewright.paper;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.TimezoneInfo;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.Status;
import biweekly.property.Trigger;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Optional;

/**
 * A calendar that phones subscribe to (RFC 5545, with the name and refresh interval of RFC 7986). An entry keeps its UID and
 * is told apart from its older self by a rising SEQUENCE, so that calendars move it in place instead of showing it twice.
 *
 * @param name whose calendar it is
 * @param alarms how long before each entry a phone rings, once for each; none rings where an entry is cancelled
 */
public record CalendarFile(String name, List<Entry> entries, List<Duration> alarms) {
    private static final int LONGEST_LINE = 75;
    private static final int REFRESH_MINUTES = 10;

    /**
     * One entry.
     *
     * @param uid the same for ever, and of no other entry anywhere
     * @param sequence one more with each change that matters
     * @param stamp when it last changed
     * @param end empty = not known
     * @param cancelled it was announced and will not be
     */
    public record Entry(
            String uid,
            int sequence,
            Instant stamp,
            Instant start,
            Optional<Instant> end,
            String summary,
            String location,
            String description,
            String url,
            boolean cancelled) {}

    public CalendarFile {
        entries = List.copyOf(entries);
        alarms = List.copyOf(alarms);
    }

    /** One that rings for nothing. */
    public CalendarFile(String name, List<Entry> entries) {
        this(name, entries, List.of());
    }

    /** The whole file: lines end with CRLF and are folded at 75 octets, RFC 5545 section 3.1. */
    public String text() {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Tiewright//Order of play//EN");
        calendar.setName(plain(name));
        calendar.setExperimentalProperty("X-WR-CALNAME", plain(name));
        calendar.setRefreshInterval(minutes(Duration.ofMinutes(REFRESH_MINUTES), false));
        entries.forEach(entry -> calendar.addEvent(ringing(entry)));
        TimezoneInfo utc = new TimezoneInfo();
        calendar.setTimezoneInfo(utc);
        return folded(written(calendar));
    }

    private VEvent ringing(Entry entry) {
        VEvent event = event(entry);
        if (!entry.cancelled()) {
            alarms.forEach(before -> event.addAlarm(
                    VAlarm.display(new Trigger(minutes(before, true), Related.START), plain(entry.summary()))));
        }
        return event;
    }

    /** Section 3.3.6: in whole minutes, which every calendar reads. */
    private static biweekly.util.Duration minutes(Duration duration, boolean isBefore) {
        return biweekly.util.Duration.builder()
                .prior(isBefore)
                .minutes((int) duration.toMinutes())
                .build();
    }

    private static VEvent event(Entry entry) {
        VEvent event = new VEvent();
        event.setUid(plain(entry.uid()));
        event.setSequence(entry.sequence());
        event.setDateTimeStamp(Date.from(entry.stamp()));
        event.setLastModified(Date.from(entry.stamp()));
        event.setDateStart(Date.from(entry.start()), true);
        entry.end().ifPresent(end -> event.setDateEnd(Date.from(end), true));
        event.setSummary(plain(entry.summary()));
        said(entry.location()).ifPresent(event::setLocation);
        said(entry.description()).ifPresent(event::setDescription);
        said(entry.url()).ifPresent(event::setUrl);
        event.setStatus(entry.cancelled() ? Status.cancelled() : Status.confirmed());
        return event;
    }

    private static Optional<String> said(String text) {
        return Optional.of(plain(text)).filter(plain -> !plain.isEmpty());
    }

    /** Control characters cannot stand in a calendar, but for the line break, which is escaped (section 3.3.11). */
    private static String plain(String text) {
        return text.replaceAll("[\\p{Cntrl}&&[^\\n]]", " ");
    }

    /** Unfolded: the library counts characters where the standard counts octets. */
    private static String written(ICalendar calendar) {
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    static String folded(String text) {
        StringBuilder all = new StringBuilder();
        for (String line : text.split("\r\n")) {
            fold(line, all);
        }
        return all.toString();
    }

    /** No line longer than 75 octets without its end, no character cut in two; what goes on begins with a space. */
    private static void fold(String line, StringBuilder all) {
        int octets = 0;
        for (int at = 0; at < line.length(); at += Character.charCount(line.codePointAt(at))) {
            String one = Character.toString(line.codePointAt(at));
            int more = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST_LINE) {
                all.append("\r\n ");
                octets = 1;
            }
            all.append(one);
            octets += more;
        }
        all.append("\r\n");
    }
}
