package tiewright.http.organiser;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tiewright.conditions.Plays;
import tiewright.event.Refusal;
import tiewright.http.pieces.InputTable;
import tiewright.http.pieces.Option;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Visit;

/** What a player states to play in beside open rubbers, as it is asked and typed. */
final class PlaysField {
    static final String NAME = "plays";

    /** A list may say women's or a letter. */
    private static final List<List<String>> WRITTEN =
            List.of(List.of("women", "women's", "w"), List.of("men", "men's", "m"));

    private PlaysField() {}

    static InputTable.Cell cell(Visit visit, Fields fields, String id, Optional<Plays> stands) {
        List<Option> choices = List.of(
                Option.of(Plays.WOMEN.code(), visit.say("page-organiser.plays-women"), false),
                Option.of(Plays.MEN.code(), visit.say("page-organiser.plays-men"), false));
        return fields.cell(id, stands.map(Plays::code).orElse(""), visit.say("page-organiser.plays-nothing"), choices);
    }

    static Optional<Plays> read(Form form, String field) {
        return read(form, field, form.text(field));
    }

    /** @param field where it is said that nothing could be made of what was typed */
    static Optional<Plays> read(Form form, String field, String typed) {
        String plain = typed.strip().toLowerCase(Locale.ROOT).replace('\u2019', '\'');
        Optional<Plays> stated = WRITTEN.stream()
                .filter(words -> words.contains(plain))
                .findFirst()
                .flatMap(words -> Plays.parse(words.get(0)));
        if (stated.isEmpty() && !plain.isEmpty()) {
            form.fault(Refusal.of("form.not-plays").with("typed", typed).at(field));
        }
        return stated;
    }
}
