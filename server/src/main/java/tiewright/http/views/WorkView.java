package tiewright.http.views;

import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.Refusal;

/**
 * A page where an official works: what stands, and beside it the form that changes it.
 *
 * @param back where one came from
 * @param intro sentences before the first section
 */
public record WorkView(Refusal refusal, NavLink back, List<String> intro, List<Section> sections) {
    public WorkView {
        intro = List.copyOf(intro);
        sections = List.copyOf(sections);
    }

    /**
     * @param id unique on the page
     * @param heading empty for none
     * @param way to a page of its own, below the rest
     * @param fold the line behind which it stays until pressed; empty where it stands open
     */
    public record Section(
            String id,
            String heading,
            List<String> lines,
            Optional<ReasonTable> table,
            Optional<WorkForm> form,
            Optional<NavLink> way,
            String fold) {
        public Section {
            lines = List.copyOf(lines);
        }

        public static Section of(String id, String heading, String... lines) {
            return new Section(id, heading, List.of(lines), Optional.empty(), Optional.empty(), Optional.empty(), "");
        }

        public Section saying(List<String> more) {
            return new Section(
                    id,
                    heading,
                    java.util.stream.Stream.concat(lines.stream(), more.stream())
                            .toList(),
                    table,
                    form,
                    way,
                    fold);
        }

        public Section with(ReasonTable shown) {
            return new Section(id, heading, lines, Optional.of(shown), form, way, fold);
        }

        public Section with(WorkForm asked) {
            return new Section(id, heading, lines, table, Optional.of(asked), way, fold);
        }

        /** @param answer what it says in one line; the rest is behind it */
        public Section folded(String answer) {
            return new Section(id, heading, lines, table, form, way, answer);
        }

        /** Leads on to a page of its own. */
        public Section with(NavLink onwards) {
            return new Section(id, heading, lines, table, form, Optional.of(onwards), fold);
        }
    }

    /**
     * @param name which of the page's forms it is; sent with it
     * @param kept what a phone calls it while it waits for a connection; empty where it must not be sent later
     */
    public record WorkForm(String name, String action, List<FormField> fields, List<Button> buttons, String kept) {
        public WorkForm {
            fields = List.copyOf(fields);
            buttons = List.copyOf(buttons);
        }

        public WorkForm(String name, String action, List<FormField> fields, List<Button> buttons) {
            this(name, action, fields, buttons, "");
        }

        public WorkForm keptAs(String words) {
            return new WorkForm(name, action, fields, buttons, words);
        }
    }
}
