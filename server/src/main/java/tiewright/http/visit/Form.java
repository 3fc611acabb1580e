package tiewright.http.visit;

import io.javalin.http.Context;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import tiewright.event.Refusal;

/** What was typed, read into types. What cannot be read is noted beside its field, and asking goes on. */
public final class Form {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm");

    private final Map<String, List<String>> typed;
    private final List<Refusal> faults = new ArrayList<>();

    private Form(Map<String, List<String>> typed) {
        this.typed = typed;
    }

    public static Form of(Context ctx) {
        return new Form(ctx.formParamMap());
    }

    /** What stands in the query of the address, as if it had been typed. */
    public static Form ofQuery(Context ctx) {
        return new Form(ctx.queryParamMap());
    }

    /** What a form stands filled with before anybody typed. */
    public static Form of(Map<String, String> values) {
        Map<String, List<String>> typed = new TreeMap<>();
        values.forEach((field, value) -> typed.put(field, List.of(value)));
        return new Form(typed);
    }

    /** The same with these values in the place of what was typed there. */
    public Form with(Map<String, String> values) {
        Map<String, List<String>> more = new TreeMap<>(typed);
        values.forEach((field, value) -> more.put(field, List.of(value)));
        return new Form(more);
    }

    public static Form empty() {
        return new Form(Map.of());
    }

    /** As typed, but in one Unicode form and without blanks at the ends; empty if nothing was. */
    public String text(String field) {
        List<String> values = typed.getOrDefault(field, List.of());
        return values.isEmpty()
                ? ""
                : Normalizer.normalize(values.get(0), Normalizer.Form.NFC).strip();
    }

    public List<String> texts(String field) {
        return typed.getOrDefault(field, List.of()).stream()
                .filter(value -> !value.isBlank())
                .toList();
    }

    /** Whether the field was part of the form that was sent, filled or not. */
    public boolean wasAsked(String field) {
        return typed.containsKey(field);
    }

    public boolean has(String field) {
        return !text(field).isEmpty();
    }

    public Optional<String> maybe(String field) {
        return Optional.of(text(field)).filter(value -> !value.isEmpty());
    }

    public boolean isTicked(String field) {
        return has(field);
    }

    public OptionalInt number(String field) {
        String value = text(field);
        if (value.isEmpty()) {
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(Integer.parseInt(value));
        } catch (NumberFormatException notANumber) {
            fault("form.not-a-number", field, value);
            return OptionalInt.empty();
        }
    }

    public Optional<LocalTime> time(String field) {
        return read(field, "form.not-a-time", value -> LocalTime.parse(value.replace('.', ':'), CLOCK));
    }

    public Optional<LocalDate> date(String field) {
        return read(field, "form.not-a-date", LocalDate::parse);
    }

    /** Reads a value with any reader that throws for what it cannot read. */
    public <T> Optional<T> read(String field, String fault, Function<String, T> reader) {
        String value = text(field);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(reader.apply(value));
        } catch (DateTimeException | IllegalArgumentException unread) {
            fault(fault, field, value);
            return Optional.empty();
        }
    }

    /** Like {@link #read}, for a field that must be filled. */
    public <T> Optional<T> must(String field, Optional<T> value) {
        if (value.isEmpty() && faults.stream().noneMatch(fault -> fault.field().equals(field))) {
            faults.add(Refusal.of("form.missing").at(field));
        }
        return value;
    }

    public String mustText(String field) {
        return must(field, maybe(field)).orElse("");
    }

    /** A number in a field that must be filled. */
    public OptionalInt mustNumber(String field) {
        OptionalInt number = number(field);
        if (number.isEmpty()) {
            must(field, Optional.empty());
        }
        return number;
    }

    public void fault(Refusal refusal) {
        faults.add(refusal);
    }

    private void fault(String code, String field, String value) {
        faults.add(Refusal.of(code).with("typed", value).at(field));
    }

    /** All that was filled in but for what the page itself added: the same again only if the person sent the same again. */
    public String content(Set<String> added) {
        SortedMap<String, List<String>> filled = new TreeMap<>(typed);
        filled.keySet().removeAll(added);
        return filled.toString();
    }

    public List<Refusal> faults() {
        return List.copyOf(faults);
    }

    public boolean isClean() {
        return faults.isEmpty();
    }
}
