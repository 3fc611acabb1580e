package tiewright.http.visit;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.InputTable;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;

/** Makes the fields of one form of a page, filled with what was typed into it or, if it was not tried, with what stands. */
public final class Fields {
    /** The hidden field that says which form of a page was sent. */
    public static final String FORM = "form";

    private final Tried tried;

    private Fields(Tried tried) {
        this.tried = tried;
    }

    /** @param form what was typed into another form of the page does not concern this one */
    public static Fields of(String form, Tried tried) {
        return new Fields(tried.typed().text(FORM).equals(form) ? tried : Tried.NOTHING);
    }

    public TextField line(String id, String label, String stands) {
        return text(id, TextField.Kind.LINE, label, stands);
    }

    public TextField text(String id, TextField.Kind kind, String label, String stands) {
        return TextField.of(id, kind, label, tried.value(id, stands)).withError(tried.error(id));
    }

    public TextField time(String id, String label, Optional<LocalTime> stands) {
        return text(id, TextField.Kind.TIME, label, said(stands));
    }

    public TextField number(String id, String label, OptionalInt stands) {
        return text(id, TextField.Kind.NUMBER, label, said(stands));
    }

    public SelectField select(String id, String label, String nothing, String stands, List<Option> options) {
        return SelectField.of(id, label, nothing, chosen(id, stands, options)).withError(tried.error(id));
    }

    public ChoiceList oneOf(String id, String legend, String stands, List<Option> options) {
        return ChoiceList.one(id, legend, chosen(id, stands, options)).withError(tried.error(id));
    }

    /** A single tick that sends {@code yes}. */
    public ChoiceList tick(String id, String legend, String label, boolean stands) {
        Option option = Option.of("yes", label, tried.isChosen(id, "yes", stands));
        return new ChoiceList(id, legend, "", tried.error(id), true, List.of(option));
    }

    public InputTable.Cell cell(String id, InputTable.Kind kind, String stands) {
        return new InputTable.Cell(id, kind, tried.value(id, stands), tried.error(id));
    }

    /** A cell in which one of these is chosen, or nothing. */
    public InputTable.Cell cell(String id, String stands, String nothing, List<Option> options) {
        List<Option> all = new ArrayList<>(List.of(Option.of("", nothing, false)));
        all.addAll(options);
        return InputTable.Cell.choice(id, tried.error(id), chosen(id, stands, all));
    }

    private List<Option> chosen(String id, String stands, List<Option> options) {
        String value = tried.value(id, stands);
        return options.stream()
                .map(one -> new Option(
                        one.value(), one.label(), one.why(), one.value().equals(value), one.refused()))
                .toList();
    }

    public static String said(Optional<LocalTime> time) {
        return time.map(HallClock::said).orElse("");
    }

    public static String said(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }
}
